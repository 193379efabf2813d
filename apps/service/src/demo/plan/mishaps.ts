import { INSPECTORS, QUALITY } from './people.js';
import type { DemoHull } from './parts.js';
import { draft, type Draft, type Seeded } from './step.js';
import { instant } from './working-days.js';

/** What goes otherwise than planned on some hulls, by their index, so that the release list has something to say. */
export const withMishaps = (demo: Seeded, hull: DemoHull, drafts: readonly Draft[]): readonly Draft[] => {
  const mishap = MISHAPS[hull.index];
  return mishap === undefined ? drafts : mishap(demo, hull, drafts);
};

type Mishap = (demo: Seeded, hull: DemoHull, drafts: readonly Draft[]) => readonly Draft[];

/** Changes the body or the time of one draft. */
const changing = (drafts: readonly Draft[], name: string, changes: (old: Draft) => Partial<Draft>): readonly Draft[] =>
  drafts.map((each) => (each.name === name ? { ...each, ...changes(each) } : each));

/** A humid morning: the layer was kept, and quality let it stand. The nonconformity is the row after the layer's uses. */
const humid: Mishap = (demo, { number, startDay, serial }, drafts) => {
  const name = `${number}-H H6`;
  const uses = drafts.find((each) => each.name === name)?.needs.length ?? 0;
  const air = { airTemperature: { value: 26.4, unit: 'C' }, relativeHumidity: { value: 84, unit: '%' } };
  return [
    ...changing(drafts, name, ({ body }) => ({ body: { ...body, climate: air } })),
    draft(
      'dispose',
      { name: `${name} humidity conceded`, at: instant(startDay + 6, '09:00'), by: QUALITY },
      {
        ...{ of: 'nonconformity', about: demo.id(name, uses + 1), disposition: 'use as is' },
        ...{
          concession: `C-${serial}-H6`,
          reason: 'Barcol the next morning inside at every spot; no dry glass found.',
        },
      },
    ),
  ];
};

/** A repair that its inspector does not accept yet. */
const refused: Mishap = (demo, { number }, drafts) => {
  const name = `${number}-H defect 1`;
  const judged = drafts.filter((each) => each.name === `${name} accepted`);
  if (judged.length === 0) throw new Error(`The plan has no repair of ${name} to refuse; choose another hull.`);
  return changing(drafts, `${name} accepted`, () => ({
    body: { accepted: false, note: 'Still sounds hollow at the forward edge; grind out again.' },
  }));
};

/** A kit whose plies are in doubt, held on the day before the summer break. */
const heldKit: Mishap = (_demo, { serial }, drafts) => [
  ...drafts,
  draft(
    'changeLotState',
    { name: `kit K-${serial}-H6 held`, at: instant(53, '15:00'), by: QUALITY, of: `K-${serial}-H6` },
    { state: 'held', reason: 'Cutting list and number of plies do not agree; to be counted.' },
  ),
];

/** Work that went on before the hold point was signed. */
const signedLate: Mishap = (_demo, { number, startDay }, drafts) =>
  changing(drafts, `${number}-H H2 signed`, () => ({ at: instant(startDay + 2, '15:20'), by: INSPECTORS[0] }));

/** Readings that nobody has taken yet. */
const unread: Mishap = (_demo, { number }, drafts) =>
  drafts.filter(({ name }) => !name.startsWith(`${number}-H H6 Barcol`));

/** A soft spot that quality has not judged yet. */
const softSpot: Mishap = (_demo, { number }, drafts) =>
  changing(drafts, `${number}-H H6 Barcol hardness`, ({ body }) => {
    const { spots, ...others } = body as { readonly spots: readonly object[] };
    return { body: { ...others, spots: spots.map((spot, i) => (i === 2 ? { ...spot, value: '29' } : spot)) } };
  });

const MISHAPS: Readonly<Record<number, Mishap>> = {
  10: humid,
  24: refused,
  25: heldKit,
  26: softSpot,
  27: signedLate,
  28: unread,
};
