import { Link } from '@tanstack/react-router';
import type { FrozenSettings } from '@hull-record/contracts';
import { Fold } from '../ui/fold.js';
import { Facts } from '../ui/page.js';
import { CalendarDay, Moment } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** What the settings of a case hold, as far as a page names it; all of it is shown as it was hashed. */
interface Known {
  readonly method?: string;
  readonly kind?: string;
  readonly models?: readonly string[];
  readonly builtFrom?: string | null;
  readonly builtTo?: string | null;
  readonly origin?: string;
  readonly cutOff?: string;
  readonly cutOffBecause?: string;
  readonly reportLagDays?: number;
  readonly strata?: readonly string[];
  readonly exposureShare?: number;
  readonly claims?: string;
  readonly attribution?: { readonly seed?: number; readonly worlds?: number };
}

/** Frozen settings: what is judged and how, with hash, seed and method. */
export const SettingsShown = ({ frozen }: { readonly frozen: FrozenSettings }) => {
  const { t, term, kind, percent } = useWords();
  const known = frozen.settings as Known;
  const { models = [], strata = [], builtFrom = null, builtTo = null, cutOff, exposureShare, attribution } = known;
  return (
    <>
      <Facts
        rows={[
          [t('cases.versionIs'), frozen.version],
          [
            t('cases.kind'),
            <Link to="/claims" search={{ kind: known.kind ?? '' }}>
              {kind(known.kind ?? '')}
            </Link>,
          ],
          [t('cases.models'), models.length === 0 ? t('cases.allModels') : models.join(', ')],
          [t('cases.builtFrom'), builtFrom === null ? null : <CalendarDay at={builtFrom} />],
          [t('cases.builtTo'), builtTo === null ? null : <CalendarDay at={builtTo} />],
          [t('cases.origin'), term(known.origin ?? '')],
          [t('cases.cutOff'), cutOff === undefined ? null : <CalendarDay at={cutOff} />],
          [t('cases.cutOffBecause'), <Said text={known.cutOffBecause ?? ''} />],
          [t('cases.lag'), t('cases.days', { days: known.reportLagDays ?? 0 })],
          [t('cases.strata'), strata.map(term).join(', ') || t('record.none')],
          [t('cases.share'), exposureShare === undefined ? null : percent(exposureShare)],
          [t('cases.claims'), term(known.claims ?? '')],
          [t('cases.seed'), attribution?.seed ?? null],
          [t('cases.worlds'), attribution?.worlds ?? null],
          [t('cases.method'), known.method ?? null],
          [t('record.reason'), <Said text={frozen.reason} />],
          [t('cases.by'), <span className="n">{frozen.by}</span>],
          [t('cases.frozenAt'), <Moment at={frozen.frozenAt} />],
        ]}
      />
      <p className="note">
        {t('cases.hash')} <span className="n hash">{frozen.sha256}</span>
      </p>
      <Fold summary={t('cases.asHashed')}>
        <pre className="wrapped n">{JSON.stringify(frozen.settings, null, 2)}</pre>
      </Fold>
    </>
  );
};
