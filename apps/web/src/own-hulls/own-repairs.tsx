import type { OwnRepair } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { ownRepairsQuery } from '../api/queries-of-own.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { mark } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Facts, Section } from '../ui/page.js';
import { CalendarDay } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { RepairPhotos } from './repair-photos.js';
import { ReportRepair } from './report-repair.js';

/** Repairs of an own hull that were done outside the plant, with their photos and what the plant said; and a way to report one. */
export const OwnRepairs = ({ number }: { readonly number: string }) => {
  const { t } = useWords();
  const query = useQuery(ownRepairsQuery(number));
  return (
    <Section name={t('own.repairs')}>
      <Answer what={t('own.theRepairs')} query={query}>
        {({ repairs, parts, openDefects }) => (
          <>
            {repairs.length === 0 ? <p className="soft">{t('own.noRepairs')}</p> : null}
            <ul className="plain">
              {repairs.map((repair) => (
                <li key={repair.id}>
                  <Repair number={number} repair={repair} />
                </li>
              ))}
            </ul>
            <Allowed to="reportOwnRepair" what={t('own.report')}>
              <Fold summary={t('own.report')}>
                <ReportRepair number={number} parts={parts} openDefects={openDefects} />
              </Fold>
            </Allowed>
          </>
        )}
      </Answer>
    </Section>
  );
};

interface RepairProps {
  readonly number: string;
  readonly repair: OwnRepair;
}

const Repair = ({ number, repair }: RepairProps) => {
  const { t } = useWords();
  const { at, part, own, defects, when } = repair;
  return (
    <>
      <h3>{t('own.repairAt', { mark: repair.mark, part, at })}</h3>
      <p className="note">{t('own.notWitnessed')}</p>
      <Facts
        rows={[
          [t('own.judged'), <State of={repair.state} />],
          ...(when === null ? [] : [[t('own.repairedOn'), <When of={when} />] as const]),
          [t('own.answers'), <span className="n">{defects.join(', ')}</span>],
          [t('own.whatWasDone'), <Said text={repair.procedure} />],
          ...(
            [
              ['own.materialTold', repair.material],
              ['own.knownFrom', repair.toldBy],
              ['own.evidence', repair.evidence],
              ['own.note', repair.note],
            ] as const
          ).flatMap(([label, said]) => (said === null ? [] : [[t(label), <Said text={said} />] as const])),
        ]}
      />
      {own ? <RepairPhotos number={number} repair={repair} /> : <p className="note soft">{t('own.ofOthers')}</p>}
    </>
  );
};

/** A day as dealers report it; what others told may be any words. */
const When = ({ of }: { readonly of: string }) =>
  /^\d{4}-\d\d-\d\d$/.test(of) ? <CalendarDay at={of} /> : <Said text={of} />;

const State = ({ of }: { readonly of: OwnRepair['state'] }) => {
  const { term } = useWords();
  if (of === 'accepted') return mark('made', term(of));
  return mark(of === 'to be judged' ? 'to come' : 'outside', term(of));
};
