import { kg, type Shop } from './shop.js';

/** Text that would run if a page took it for markup. */
export const IMAGE = '<img src=x onerror="window.ran = 1">';
const MARKUP = `<script>window.ran = 1</script>${IMAGE}`;

/**
 * Records what the page is tried on: four hulls of one tank with a heel, and one hull of other lots.
 *
 * R-BAD is in 86-1 and 86-2 whole, in 86-3 through the heel of the tank, and in 86-4 through a repair; 86-5 has none of it.
 */
export const recordStory = async (shop: Shop): Promise<void> => {
  for (const [code, material] of [...STOCK]) await shop.receive(code, material, { supplier: 'Aldermoor Resins' });
  await shop.receive('R-ODD', 'RES-PE', { supplier: MARKUP, state: 'quarantined' });
  await shop.fill('T1-1', null, [{ lot: 'R-BAD', amount: kg(300) }]);
  const lots = { gel: 'G-1', glass: 'M-1', resin: { tank: 'T1' } };
  const first = await shop.wholeHull('86-1', lots);
  await shop.wholeHull('86-2', lots);
  await shop.fill('T1-2', kg(140), [{ lot: 'R-GOOD', amount: kg(660) }]);
  await shop.wholeHull('86-3', lots);
  await shop.wholeHull('86-4', { ...lots, resin: { lot: 'R-GOOD' } });
  await shop.wholeHull('86-5', { gel: 'G-2', glass: 'M-2', resin: { lot: 'R-GOOD' } });
  await faultsOf(shop, first.skin);
  await deckOf(shop);
  await shop.act('/api/hulls/86-2/life', { what: 'at dealer', dealer: 'NLM' });
  await shop.startHull('86-6');
};

const STOCK = [
  ['G-1', 'GEL-W'],
  ['G-2', 'GEL-W'],
  ['R-BAD', 'RES-VE'],
  ['R-GOOD', 'RES-VE'],
  ['M-1', 'MAT-450'],
  ['M-2', 'MAT-450'],
] as const;

/** On 86-1: a film reading that is too thick, an open void with odd words, a repaired one. On 86-4: a repair with R-BAD. */
const faultsOf = async (shop: Shop, skin: string): Promise<void> => {
  await shop.receipt(`/api/layers/${skin}/readings`, { what: 'thickness', unit: 'mm', spots: [{ value: '1.42' }] });
  const at = (side: string, fromTransomMm: number, girthMm: number) => ({
    surface: 'shell',
    side,
    fromTransomMm,
    girthMm,
  });
  await shop.act('/api/parts/86-1-H/defects', {
    ...{ kind: 'air-bubble', layer: 'L2', place: at('port', 3_420, 900), lengthMm: 22, widthMm: 14, note: MARKUP },
  });
  const found = await shop.act('/api/parts/86-1-H/defects', {
    kind: 'dry-spot',
    layer: 'L3',
    place: at('starboard', 1_250, 600),
  });
  await repair(shop, '86-1-H', found, 'R-GOOD');
  const other = await shop.act('/api/parts/86-4-H/defects', {
    kind: 'air-bubble',
    layer: 'L2',
    place: at('port', 2_000, 300),
  });
  await repair(shop, '86-4-H', other, 'R-BAD');
};

const repair = async (shop: Shop, part: string, defect: string, resin: string): Promise<void> => {
  const id = await shop.act(`/api/parts/${part}/repairs`, {
    defects: [defect],
    procedure: 'Cut out, feathered and filled with laminate, as the repair procedure asks',
    taperRatio: 12,
    grindOutMm: { lengthMm: 60, widthMm: 40, depthMm: 2 },
    plies: ['2 x mat 450'],
    doneBy: ['PAT-1'],
    used: [{ lot: resin, amount: kg(0.4) }],
  });
  await shop.act(`/api/repairs/${id}/acceptances`, { enteredBy: 'QUA-1', accepted: true });
};

const deckOf = async (shop: Shop): Promise<void> => {
  await shop.act('/api/parts', { number: '86-1-D', kind: 'deck', model: 'TS86', mold: 'M-86-D' });
  await shop.layer('86-1', 'D1', [{ lot: 'R-GOOD', amount: kg(30) }], { part: '86-1-D' });
  await shop.act('/api/hulls/86-1/joints', { part: '86-1-D', doneBy: ['LAM-2'] });
};
