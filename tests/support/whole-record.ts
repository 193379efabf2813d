import { kg, type Shop } from './shop.js';

/** What later tests need to know of the hull that was recorded. */
export interface WholeRecord {
  readonly hull: string;
  /** The use whose amount was corrected from 20 kg to 44.1 lb, as it was recorded first. */
  readonly usedFirst: string;
  /** When the last fact before that correction was recorded, and the correction itself. */
  readonly before: string;
  readonly corrected: string;
}

interface PartOnPage {
  readonly layers: readonly {
    readonly record: {
      readonly used: readonly { readonly id: string; readonly lot: string }[];
      readonly readings: readonly { readonly id: string; readonly verdict: string }[];
    };
  }[];
}

const VOID = {
  ...{ kind: 'air-bubble', layer: 'L2', lengthMm: 22, widthMm: 14, depthMm: 2 },
  place: { surface: 'shell', side: 'port', fromTransomMm: 3_420, girthMm: 950 },
};

const BLISTER = {
  ...{ kind: 'blister', layer: 'L2', grade: '6M', lengthMm: 8 },
  place: { surface: 'shell', side: 'starboard', fromTransomMm: 2_100, girthMm: 640 },
};

/** Lots: a tank filled twice, so that two suppliers' lots are in it, and a bucket made with an expired catalyst. */
const stockUp = async (shop: Shop): Promise<void> => {
  await shop.receive('G-1', 'GEL-W');
  await shop.receive('R-1', 'RES-VE');
  await shop.receive('R-2', 'RES-VE');
  await shop.receive('M-1', 'MAT-450');
  await shop.receive('C-1', 'MEKP', { expiresOn: '2026-01-02' });
  await shop.receive('P-1', 'PASTE');
  await shop.fill('T1-1', null, [{ lot: 'R-1', amount: kg(400) }]);
  await shop.fill('T1-2', kg(100), [{ lot: 'R-2', amount: kg(400, 'metered') }]);
  await shop.mix('B-1', [
    { tank: 'T1', amount: kg(9.8) },
    { lot: 'C-1', amount: kg(0.2, 'as scheduled') },
  ]);
};

const makeLayers = async (shop: Shop, hull: string): Promise<void> => {
  const gel = await shop.layer(hull, 'L1', [{ lot: 'G-1', amount: kg(18) }], {
    climate: { airTemperature: { value: 21.4, unit: 'C' }, relativeHumidity: { value: 58, unit: '%' } },
    note: 'Second pass after 20 minutes.',
  });
  const film = [
    [16, 18],
    [18, 20],
    [20, 22],
    [22, 24],
  ] as const;
  await shop.film(gel, film);
  await shop.sign(gel);
  const skin = [
    { tank: 'T1', amount: kg(20, 'metered') },
    { lot: 'M-1', amount: kg(9) },
  ];
  await shop.layer(hull, 'L2', skin, { doneBy: ['LAM-1', 'LAM-2'] });
  const bulk = await shop.layer(hull, 'L3', [
    { tank: 'T1', amount: kg(60, 'apportioned') },
    { lot: 'M-1', amount: kg(40) },
  ]);
  await shop.sign(bulk);
};

/** Makes a deck and joins it with a piece of paste; gives when that was recorded. */
const joinDeck = async (shop: Shop, hull: string, part: string): Promise<string> => {
  await shop.startDeck(part);
  await shop.layer(hull, 'D1', [{ lot: 'M-1', amount: kg(12) }], { part });
  const joined = await shop.receipt(`/api/hulls/${hull}/joints`, {
    ...{ part, doneBy: ['LAM-2'] },
    used: [{ lot: 'P-1', amount: { quantity: 1, unit: 'pc', basis: 'as scheduled' } }],
  });
  return String(joined['recordedAt']);
};

/**
 * Records a hull that has something of everything: film readings with one outside under concession, tank resin of two
 * suppliers' lots, a void that was repaired and accepted, a blister, a corrected amount, a HIN, and two decks joined with
 * paste.
 */
export const recordWhole = async (shop: Shop, hull = '86-1'): Promise<WholeRecord> => {
  await stockUp(shop);
  await shop.startHull(hull);
  await makeLayers(shop, hull);
  const part = await shop.read<PartOnPage>(`/api/parts/${hull}-H`);
  const outside = part.layers[0]?.record.readings.find(({ verdict }) => verdict === 'outside')?.id ?? '';
  await shop.dispose('reading', outside, 'use as is', 'C-7');
  const found = await shop.defect(`${hull}-H`, VOID);
  const repair = await shop.repair(`${hull}-H`, [found], {
    ...{ taperRatio: 12, grindOutMm: { lengthMm: 48, widthMm: 40, depthMm: 2 }, plies: ['3 x mat 300'] },
    used: [{ lot: 'B-1', amount: { quantity: '240', unit: 'g', basis: 'weighed' } }],
  });
  await shop.judge(repair, true);
  await shop.defect(`${hull}-H`, BLISTER);
  await shop.act(`/api/hulls/${hull}/hins`, { hin: 'TRZ00861A626' });
  for (const what of ['demolded', 'HIN affixed']) await shop.act(`/api/hulls/${hull}/life`, { what });
  await joinDeck(shop, hull, `${hull}-D`);
  const joined = await joinDeck(shop, hull, `${hull}-E`);
  const usedFirst = part.layers[1]?.record.used.find(({ lot }) => lot === 'T1-2')?.id ?? '';
  const set = { kind: 'used', amount: { quantity: '44.1', unit: 'lb', basis: 'weighed' } };
  const reason = 'The scale counts pounds.';
  const corrected = await shop.receipt('/api/corrections', { corrects: usedFirst, reason, set, enteredBy: 'QUA-1' });
  return { hull, usedFirst, before: joined, corrected: String(corrected['recordedAt']) };
};
