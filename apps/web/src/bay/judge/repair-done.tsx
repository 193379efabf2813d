import type { PartView, RepairView } from '@hull-record/contracts';
import { Elsewhere } from '../../record/elsewhere.js';
import { Verdicts } from '../../record/verdicts.js';
import { Facts } from '../../ui/page.js';
import { Moment } from '../../words/moments.js';
import { Said } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import { GrindOut } from '../repair/grind-out.js';
import type { Order, Plan } from '../repair/order.js';
import { Shots } from '../../record/shots.js';
import { UsedLines } from './used-lines.js';

interface RepairDoneProps {
  readonly part: PartView;
  readonly repair: RepairView;
}

/** A repair as it was done: its grind-out to scale, with what, by whom, how hard it became, and photos of its defects; of one done elsewhere what is known. */
export const RepairDone = ({ part, repair }: RepairDoneProps) => {
  const { t, figure } = useWords();
  const { procedure, defects, plies, doneBy, outside, readings, verdicts, used, happenedAt } = repair;
  const drawn = drawnOf(repair);
  const photos = part.defects.filter(({ mark }) => defects.includes(mark)).flatMap((defect) => defect.photos);
  const barcol = readings.filter(({ what }) => what === 'Barcol hardness');
  return (
    <>
      <Facts
        rows={[
          [t('record.defects'), <span className="n">{defects.join(', ')}</span>],
          [t('bay.procedure'), <Said text={procedure} />],
          [t('bay.pliesLaid'), plies.length === 0 ? null : <Said text={plies.join('; ')} />],
          [t('bay.doneBy'), outside === null ? doneBy.join(', ') : <Elsewhere repair={repair} of={outside} />],
          [t('record.when'), <Moment at={happenedAt} />],
          [
            t('bay.barcolRead'),
            barcol.length === 0 ? t('bay.noneRead') : barcol.map(({ value }) => figure(Number(value))).join(', '),
          ],
        ]}
      />
      <UsedLines used={used} />
      {drawn === null ? null : <GrindOut plan={drawn.plan} order={drawn.order} />}
      <Verdicts verdicts={verdicts} />
      <Shots photos={photos} />
      {outside === null ? null : <Shots photos={repair.photos} />}
    </>
  );
};

/** The grind-out as it was recorded; null where its geometry was not. */
const drawnOf = ({ geometry, grindOutMm, taperRatio }: RepairView): { plan: Plan; order: Order } | null => {
  if (geometry === null || grindOutMm === null) return null;
  const { taperMm, damageDepthMm, originalMm, sides = 'one' } = geometry;
  const inner = (outer: number): number => Math.max(1, outer - 2 * taperMm);
  const { lengthMm, widthMm } = grindOutMm;
  return {
    plan: {
      ...{ lengthMm: inner(lengthMm), widthMm: inner(widthMm), depthMm: damageDepthMm, originalMm, sides },
      ratio: taperRatio ?? taperMm / damageDepthMm,
    },
    order: { taperMm, outerLengthMm: lengthMm, outerWidthMm: widthMm, patch: null, findings: [] },
  };
};
