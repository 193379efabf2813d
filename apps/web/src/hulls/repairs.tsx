import type { PartView, RepairView } from '@hull-record/contracts';
import { CAUTIONS } from '@hull-record/trade';
import { mark, stamp } from '../marks/mark.js';
import { Elsewhere } from '../record/elsewhere.js';
import { Shots } from '../record/shots.js';
import { Verdicts } from '../record/verdicts.js';
import { Fold } from '../ui/fold.js';
import { Table, type Column } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { Readings } from './readings.js';
import { UsedList } from './used.js';

/** The repairs of a part as they were done, each accepted by another person or still waiting for one. */
export const Repairs = ({ part: { repairs, number } }: { readonly part: PartView }) => {
  const { t } = useWords();
  const columns = useColumns();
  if (repairs.length === 0) return null;
  return (
    <>
      <h3>{t('hulls.repairs')}</h3>
      <Table caption={t('hulls.repairsOf', { part: number })} columns={columns} rows={repairs} />
      <Cautions />
    </>
  );
};

const useColumns = (): readonly Column<RepairView>[] => {
  const { t } = useWords();
  return [
    { head: t('hulls.mark'), cell: (repair) => repair.mark, names: true, class: 'n' },
    { head: t('hulls.of'), cell: ({ defects }) => defects.join(', '), class: 'n' },
    { head: t('hulls.done'), cell: (repair) => <Done repair={repair} /> },
    { head: t('hulls.lotsUsed'), cell: ({ used }) => <UsedList used={used} /> },
    {
      head: t('readings.head'),
      cell: ({ readings, verdicts }) => (
        <>
          <Readings readings={readings} />
          <Verdicts verdicts={verdicts} />
        </>
      ),
    },
    { head: t('hulls.accepted'), cell: (repair) => <Acceptance repair={repair} /> },
  ];
};

interface RepairProps {
  readonly repair: RepairView;
}

const Done = ({ repair }: RepairProps) => {
  const { procedure, taperRatio, grindOutMm, plies, doneBy, outside, happenedAt } = repair;
  const { t, figure } = useWords();
  const size =
    grindOutMm && [grindOutMm.lengthMm, grindOutMm.widthMm, grindOutMm.depthMm].map((side) => figure(side, 4));
  const details = [
    ...(taperRatio === null ? [] : [t('hulls.taper', { ratio: figure(taperRatio, 4) })]),
    ...(size === null ? [] : [t('hulls.groundOut', { size: size.join(' × ') })]),
    ...plies,
  ];
  return (
    <>
      <p>
        <Said text={procedure} />
      </p>
      <p>{details.join(', ')}</p>
      <p className="note soft">
        {outside === null ? (
          <Text of="hulls.doneBy" with={{ when: <Moment at={happenedAt} />, by: doneBy.join(', ') }} />
        ) : (
          <Elsewhere repair={repair} of={outside} />
        )}
      </p>
      <Shots photos={repair.photos} />
    </>
  );
};

const Acceptance = ({ repair: { acceptance: given } }: RepairProps) => {
  const { t } = useWords();
  if (given === null) return mark('near', t('hulls.waitsForAcceptance'));
  const who = { by: given.by, at: <Moment at={given.at} /> };
  return (
    <>
      {given.accepted
        ? stamp(<Text of="hulls.acceptedBy" with={who} />)
        : mark('outside', <Text of="hulls.refusedBy" with={who} />)}
      {given.note === null ? null : (
        <p className="note">
          <Said text={given.note} />
        </p>
      )}
    </>
  );
};

const Cautions = () => {
  const { t } = useWords();
  return (
    <Fold className="note" summary={t('hulls.cautions')}>
      <ul>
        {CAUTIONS.repair.map((caution) => (
          <li key={caution}>
            <Said text={caution} />
          </li>
        ))}
      </ul>
    </Fold>
  );
};
