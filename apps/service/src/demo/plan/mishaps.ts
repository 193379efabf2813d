import { INSPECTORS, QUALITY } from './people.js';
import { BREAK_DAY } from './life.js';
import { hullAt, type DemoHull } from './parts.js';
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
  // What a gun sprays is two rows: resin and catalyst.
  const needs = drafts.find((each) => each.name === name)?.needs ?? [];
  const uses = needs.length + needs.filter((need) => 'gun' in need).length;
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
    { name: `kit K-${serial}-H6 held`, at: instant(BREAK_DAY - 1, '15:00'), by: QUALITY, of: `K-${serial}-H6` },
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

/** Resin from a drum that nobody can name: the hull waits for quality. */
const unlabelled: Mishap = (_demo, { number }, drafts) =>
  changing(drafts, `${number}-H H6`, ({ needs }) => ({
    needs: needs.map((need) =>
      'material' in need && need.gun !== undefined
        ? {
            unidentified: { role: 'resin' as const, looks: 'blue drum, label washed off', foundAt: 'beside tank T2' },
            amount: need.amount,
          }
        : need,
    ),
  }));

/** A kit that was cut for the hull after it, since its own was spoiled. */
const borrows: Mishap = (demo, hull, drafts) => {
  const [own, other] = [`K-${hull.serial}-H4`, `K-${hullAt(hull.index + 1, demo).serial}-H4`];
  return drafts.map((each) => {
    if (each.name === `kit ${own}`) return { ...each, name: `kit ${other}`, body: { code: other } };
    if (each.name !== `${hull.number}-H H4`) return each;
    return {
      ...each,
      needs: each.needs.map((need) => ('lot' in need && need.lot === own ? { ...need, lot: other } : need)),
    };
  });
};

/** The hull whose kit was borrowed: another is cut for it. */
const isBorrowedFrom: Mishap = (_demo, hull, drafts) => {
  const [own, second] = [`K-${hull.serial}-H4`, `K-${hull.serial}-H4-2`];
  return drafts.map((each) => {
    if (each.name === `kit ${own}`) return { ...each, name: `kit ${second}`, body: { code: second } };
    if (each.name !== `${hull.number}-H H4`) return each;
    return {
      ...each,
      needs: each.needs.map((need) => ('lot' in need && need.lot === own ? { ...need, lot: second } : need)),
    };
  });
};

/** What must be decided first keeps a hull in the plant. */
const kept =
  (mishap: Mishap): Mishap =>
  (demo, hull, drafts) =>
    mishap(demo, hull, drafts).filter(
      ({ name }) =>
        !['released', 'left the place of manufacture', 'at dealer'].some((end) => name.endsWith(end)) &&
        !name.includes(' sold to '),
    );

const MISHAPS: Readonly<Record<number, Mishap>> = {
  36: humid,
  70: borrows,
  71: isBorrowedFrom,
  105: kept(refused),
  107: kept(heldKit),
  109: kept(softSpot),
  111: kept(signedLate),
  113: kept(unread),
  114: kept(unlabelled),
};
