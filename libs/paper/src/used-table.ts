import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import type { UsedView } from './layer-view.js';
import { para } from './paragraph.js';
import { cell, table, type Cell } from './table.js';

/** What was used: lots with the suppliers' lots behind them, amounts with their basis. */
export const usedTable = (fonts: Fonts, used: readonly UsedView[]): Block =>
  table(
    fonts,
    [
      { title: 'Lot, supplier’s lots', share: 0.4 },
      { title: 'Material', share: 0.28 },
      { title: 'Amount', share: 0.15, align: 'right' },
      { title: 'Weakest basis', share: 0.17 },
    ],
    used.map(row),
  );

const row = ({ lot, lastDay, supplierLots, material, amount, basis, corrected }: UsedView): readonly Cell[] => [
  { paragraphs: [para(lot, 'code-bold'), ...supplierLots.map((supplied) => para(supplied, 'code-note'))] },
  { paragraphs: [para(material), ...(lastDay ? [para(`last day of use ${lastDay}`, 'note')] : [])] },
  cell(amount, 'code'),
  { paragraphs: [para(basis), ...(corrected ? [para('corrected', 'bold')] : [])] },
];
