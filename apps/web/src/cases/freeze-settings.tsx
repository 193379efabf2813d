import type { FreezeCase as Sent } from '@hull-record/contracts';
import { DEFECT_KINDS } from '@hull-record/trade';
import { post } from '../api/ask.js';
import { decimal, given, type FieldGroup, type Said } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import type { Words } from '../words/words.js';
import { useWords } from '../words/use-words.js';
import { GroupSizes } from './group-sizes.js';
import { listed } from './listed.js';

const ORIGINS = [
  'left the place of manufacture',
  'at dealer',
  'sold to first purchaser',
  'warranty registered',
] as const;
const CLAIMS = ['all', 'recorded after this freeze'] as const;
const STRATA = ['build quarter', 'model'] as const;

/** The settings that are used unless somebody says otherwise; each says why at its field. */
const DEFAULTS = {
  ...{ origin: 'left the place of manufacture', reportLagDays: '30', exposureShare: '5', claims: 'all' },
  ...{ 'strata build quarter': 'yes', 'strata model': 'yes', seed: '1', worlds: '1999' },
};

/** Freezes how a case is judged, before anybody looks. What is frozen stays as it is. */
export const FreezeSettings = ({ code }: { readonly code: string }) => {
  const words = useWords();
  const { t } = words;
  return (
    <>
      <p>{t('cases.freezeWhy')}</p>
      <RecordForm
        groups={[about(words), counted(words), drawn(words)]}
        first={DEFAULTS}
        button={t('cases.freezeDo')}
        sure={() => t('cases.freezeSure')}
        send={(said, envelope) =>
          post('/api/cases/:case/settings', { case: code }, { ...envelope, ...settingsOf(said) })
        }
        done={({ result }) => (
          <Found
            of={{ result: {} }}
            words={
              <>
                {t('cases.frozenNow', { version: result.version, cutOff: words.times.calendarDay(result.cutOff) })}{' '}
                <span className="n hash">{result.sha256}</span>
              </>
            }
          />
        )}
      >
        {(said) => <GroupSizes code={code} said={said} />}
      </RecordForm>
    </>
  );
};

const about = ({ t, term, kind }: Words): FieldGroup => ({
  name: t('cases.whichHulls'),
  fields: [
    {
      ...{ name: 'kind', label: t('cases.kind'), kind: 'choice' },
      options: DEFECT_KINDS.map(({ code }) => [code, kind(code)]),
    },
    { name: 'models', label: t('cases.models'), hint: t('cases.modelsHint'), kind: 'words' },
    { name: 'builtFrom', label: t('cases.builtFrom'), kind: 'day' },
    { name: 'builtTo', label: t('cases.builtTo'), kind: 'day' },
    {
      ...{ name: 'origin', label: t('cases.origin'), kind: 'choice', hint: t('cases.originHint') },
      options: ORIGINS.map((each) => [each, term(each)]),
    },
  ],
});

const counted = ({ t, term }: Words): FieldGroup => ({
  name: t('cases.whatCounts'),
  fields: [
    { name: 'cutOff', label: t('cases.cutOff'), kind: 'day', hint: t('cases.cutOffHint') },
    { name: 'reportLagDays', label: t('cases.lag'), kind: 'decimal', hint: t('cases.lagHint') },
    {
      ...{ name: 'claims', label: t('cases.claims'), kind: 'choice', hint: t('cases.claimsHint') },
      options: CLAIMS.map((each) => [each, term(each)]),
    },
    { name: 'exposureShare', label: t('cases.sharePercent'), kind: 'decimal', hint: t('cases.shareHint') },
    ...STRATA.map((each) => ({
      name: `strata ${each}`,
      label: t('cases.within', { what: term(each) }),
      kind: 'tick' as const,
      pointer: '/strata',
    })),
  ],
});

const drawn = ({ t }: Words): FieldGroup => ({
  name: t('cases.chance'),
  fields: [
    { name: 'seed', label: t('cases.seed'), kind: 'decimal', hint: t('cases.seedHint') },
    { name: 'worlds', label: t('cases.worlds'), kind: 'decimal', hint: t('cases.worldsHint') },
    { name: 'reason', label: t('record.reason'), kind: 'words' },
  ],
});

type Settings = Omit<Sent, 'id' | 'enteredBy' | 'device' | 'happenedAt' | 'station' | 'enteredAt' | 'clockOffsetMs'>;

const settingsOf = (said: Said): Settings => ({
  kind: said('kind'),
  models: listed(said('models')),
  origin: said('origin') as Sent['origin'],
  reportLagDays: Number(decimal(said('reportLagDays'))),
  claims: said('claims') as Sent['claims'],
  exposureShare: Number(decimal(said('exposureShare'))) / 100,
  strata: STRATA.filter((each) => said(`strata ${each}`) === 'yes'),
  seed: Number(decimal(said('seed'))),
  worlds: Number(decimal(said('worlds'))),
  reason: said('reason'),
  ...given('cutOff', said('cutOff')),
  ...given('builtFrom', said('builtFrom')),
  ...given('builtTo', said('builtTo')),
});
