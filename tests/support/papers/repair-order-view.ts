import type { RepairOrderView } from '@hull-record/paper';
import { CAUTIONS } from '@hull-record/trade';
import { aDefect, aHullPart } from '../paper-views.js';
import { PART } from './hold-points-view.js';
import { PAPER } from './paper.js';

const { map, layers } = aHullPart();

/** An order to repair two defects of the usual hull molding; invented. */
export const aRepairOrder = (changes: Partial<RepairOrderView> = {}): RepairOrderView => ({
  ...PAPER,
  part: PART,
  asked: 'All defects of the part that were open.',
  defects: [
    aDefect(),
    aDefect({ mark: 'D5', kind: 'blister, grade 6M (ASTM D714)', disposition: 'repair: open it up (Q-03)' }),
  ],
  map: map && { ...map, marks: map.marks.filter(({ mark }) => mark === 'D4' || mark === 'D5') },
  layers,
  cautions: [
    { work: 'Repair', says: CAUTIONS.repair },
    { work: 'Mixing', says: CAUTIONS.mixing },
    { work: 'Laminating', says: CAUTIONS.laminating },
    { work: 'Grinding', says: CAUTIONS.grinding },
  ],
  ...changes,
});
