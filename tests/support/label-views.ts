import { buffer } from 'node:stream/consumers';
import { labelPath } from '@hull-record/contracts';
import { drawLabels, type LabelView } from '@hull-record/paper';
import { labelCaution, type LabelStock } from '@hull-record/trade';
import { CREATED } from './read-pdf.js';

/** The label of an invented lot of resin, with what is named instead. */
export const aLabel = (more: Partial<LabelView> = {}): LabelView => {
  const code = more.code ?? 'VE-2231';
  return {
    ...{ path: labelPath({ of: 'lot', code }), kind: 'Lot · resin', code, title: 'Vinyl ester resin, promoted' },
    details: ['Expires 2026-07-19', 'Supplier lot A-77120'],
    caution: labelCaution('resin'),
    ...more,
  };
};

/** Labels as a plant has them, of every kind. */
export const VARIED: readonly LabelView[] = [
  aLabel(),
  aLabel({ ...{ code: 'CAT-118', kind: 'Lot · catalyst', title: 'MEKP catalyst' }, caution: labelCaution('catalyst') }),
  aLabel({
    ...{ code: 'B-0514-3', kind: 'Bucket', title: 'MEKP catalyst + Vinyl ester resin, promoted' },
    ...{ details: ['Expires 2026-07-19'], caution: labelCaution('mix') },
  }),
  aLabel({
    ...{ code: 'K-86-12', kind: 'Kit', title: 'Chopped strand mat 450 + Biaxial 600', details: [], caution: null },
  }),
  aLabel({
    code: 'D-118-1',
    kind: 'Drum · resin',
    details: ['Lot VE-2231', 'Expires 2026-07-19', 'Supplier lot A-77120'],
  }),
  aLabel({
    ...{ path: labelPath({ of: 'part', code: '86-0112-D' }), code: '86-0112-D', kind: 'Part', title: 'Deck' },
    ...{ details: ['Model TS86', 'TS 86, open, 8.6 m'], caution: null },
  }),
  aLabel({
    ...{ path: labelPath({ of: 'hull', code: '86-0112' }), code: '86-0112', kind: 'Hull' },
    ...{ title: 'Model TS86', details: ['TS 86, open, 8.6 m'], caution: null },
  }),
  aLabel({
    ...{ path: labelPath({ of: 'badge', code: 'LAM-07' }), code: 'LAM-07', kind: 'Badge', title: 'Laminator' },
    ...{ details: [], caution: null },
  }),
];

/** So many labels with different codes. */
export const severalLabels = (count: number): readonly LabelView[] =>
  Array.from({ length: count }, (_, i) => {
    const like = VARIED[i % VARIED.length] ?? aLabel();
    const code = `${like.code}/${i + 1}`;
    return { ...like, code, path: labelPath({ of: 'lot', code }) };
  });

/** Draws labels on a stock and gives the bytes of the PDF. */
export const drawn = (labels: readonly LabelView[], stock: LabelStock, skip = 0): Promise<Buffer> =>
  buffer(drawLabels({ plantName: 'TARROW', labels, skip }, stock, CREATED));
