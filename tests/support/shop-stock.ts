/** Fields of a request. */
export type Fields = Readonly<Record<string, unknown>>;

/** Badges with the roles of each. Of these some inspect what others made, as in a small shop. */
export const PEOPLE = [
  ['REC-1', 'receiving'],
  ['LAM-1', 'laminator', 'inspector', 'quality'],
  ['LAM-2', 'laminator', 'inspector', 'quality'],
  ['INS-1', 'inspector'],
  ['PAT-1', 'patcher', 'inspector', 'quality'],
  ['QUA-1', 'quality'],
] as const;

/** Invented materials: some with a conversion to kilograms, some without. */
export const MATERIALS: readonly Fields[] = [
  { code: 'GEL-W', name: 'Isophthalic gel coat, white', role: 'gel coat', densityKgPerL: 1.28, shelfLifeDays: 90 },
  { code: 'RES-VE', name: 'Vinyl ester resin', role: 'resin', densityKgPerL: 1.1 },
  { code: 'RES-PE', name: 'Polyester resin', role: 'resin' },
  { code: 'MEKP', name: 'MEKP catalyst', role: 'catalyst', densityKgPerL: 1.11 },
  { code: 'MAT-450', name: 'Chopped strand mat 450', role: 'glass', arealMassKgPerM2: 0.45 },
  { code: 'PASTE', name: 'Bonding paste', role: 'bonding paste', pieceMassKg: 12 },
];

/** Invented girths of an 8.6 m hull and its deck, mm. */
export const SKINS = {
  'hull molding': {
    lengthMm: 8_600,
    stations: [
      { xMm: 0, edgeGirthMm: 1_900, chineGirthMm: 1_150, waterlineGirthMm: 1_250 },
      { xMm: 4_300, edgeGirthMm: 2_050, chineGirthMm: 1_250, waterlineGirthMm: 1_300 },
      { xMm: 8_600, edgeGirthMm: 900, chineGirthMm: 500, waterlineGirthMm: 600 },
    ],
    transom: { halfWidthMm: 1_250, heightMm: 900 },
  },
  deck: {
    lengthMm: 8_000,
    stations: [
      { xMm: 0, edgeGirthMm: 1_300 },
      { xMm: 8_000, edgeGirthMm: 400 },
    ],
  },
};

/** Invented schedules of the hull molding and the deck. */
export const SCHEDULES: readonly Fields[] = [
  {
    partKind: 'hull molding',
    version: 1,
    layers: [
      {
        code: 'L1',
        name: 'Gel coat',
        materials: [{ material: 'GEL-W', target: { quantity: 18, unit: 'kg' } }],
        readings: [
          { what: 'wet film', spots: 3, limits: { min: 16, max: 20, unit: 'mil' }, source: 'invented for tests' },
        ],
        climate: { airTemperature: { min: 18, max: 28, unit: 'C' } },
        holdPoint: 'HP 1',
      },
      {
        code: 'L2',
        name: 'Skin coat',
        plies: ['2 x mat 450'],
        materials: [{ material: 'RES-VE' }, { material: 'MAT-450' }],
        predecessors: ['L1'],
      },
      {
        code: 'L3',
        name: 'Bulk laminate',
        plies: ['4 x mat 450'],
        materials: [{ material: 'RES-VE' }, { material: 'RES-PE' }, { material: 'MAT-450' }],
        predecessors: ['L2'],
        holdPoint: 'HP 2',
      },
    ],
  },
  {
    partKind: 'deck',
    version: 1,
    layers: [{ code: 'D1', name: 'Deck laminate', materials: [{ material: 'RES-VE' }, { material: 'MAT-450' }] }],
  },
];
