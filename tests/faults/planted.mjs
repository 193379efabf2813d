const service = 'apps/service/src';

/** Faults that tests must notice: the file, the text that is replaced, and the test that must then fail. */
export const PLANTED = {
  'the heel of a tank is dropped': {
    file: `${service}/tanks/fill-tank.ts`,
    find: 'inputs: heel ? [heel, ...inputs] : inputs,',
    replace: 'inputs,',
    test: 'walk-the-job',
  },
  'what went into repairs is not followed': {
    file: `${service}/platform/places/places.ts`,
    find: 'Object.entries(PLACE_TABLES) as [PlaceKind, string][];',
    replace: "Object.entries(PLACE_TABLES).filter(([kind]) => kind !== 'repair') as [PlaceKind, string][];",
    test: 'walk-the-job',
  },
  'a tank stands for what is in it now, not for what was in it then': {
    file: `${service}/platform/lots/in-tank.sql.ts`,
    find: 'held.happened_at <= ${at}',
    replace: 'held.happened_at <= greatest(${at}, now())',
    test: 'walk-the-job',
  },
  'a bucket is not followed to what it was mixed of': {
    file: `${service}/platform/composition/load-upstream.ts`,
    find: 'where up.id = any($2::uuid[]) or not exists',
    replace: 'where up.id = any($2::uuid[]) and not exists',
    test: 'walk-the-job',
  },
  'a share is a share of everything, not of like material': {
    file: `${service}/platform/composition/sum-place.ts`,
    find: 'for (const { role, kg } of sources) sums.set(role, (sums.get(role) ?? 0) + kg);',
    replace: 'for (const { role } of sources) sums.set(role, sources.reduce((sum, { kg }) => sum + kg, 0));',
    test: 'walk-the-job',
  },
  'the hulls asked about are counted among the others': {
    file: `${service}/trace/shared-lots.query.ts`,
    find: '(count(*) filter (where hull_id <> all($1)))::int as others',
    replace: 'count(*)::int as others',
    test: 'walk-the-job',
  },
  'a hook-up entered late changes nothing that was sprayed': {
    file: `${service}/guns/hook-up-gun.ts`,
    find: 'await followDraws(fact,',
    replace: "if (feed === 'glass') await followDraws(fact,",
    test: 'guns',
  },
  'a fill entered late leaves the heel after it as it was': {
    file: `${service}/platform/lots/follow-tank.ts`,
    find: 'where i.input_id is distinct from f.before',
    replace: 'where false and i.input_id is distinct from f.before',
    test: 'tanks',
  },
  'a drum that is rejected takes its lot with it': {
    file: `${service}/platform/store/holds.sql.ts`,
    find: 'said.container_id = ${container} and said.what in',
    replace: 'said.container_id is not null and said.what in',
    test: 'store',
  },
  'what is said late of a lot finds nothing that was used meanwhile': {
    file: `${service}/platform/used/judge-again.ts`,
    find: 'await open(fact, await drawsSince(fact));',
    replace: '',
    test: 'store-by-time',
  },
  'what is used while a job waits is not followed': {
    file: `${service}/platform/composition/composition.ts`,
    find: 'await followStale(fact);',
    replace: '',
    test: 'recomputations',
  },
  'a job composes tank lots in any order': {
    file: `${service}/platform/recompute/recompute-plant.ts`,
    find: 'const order = await inputsFirstOf(tx, [...byId.keys()]);',
    replace: 'const order = (await inputsFirstOf(tx, [...byId.keys()])).toReversed();',
    test: 'recomputations',
  },
  'a correction stops at the lot it corrects': {
    file: `${service}/platform/composition/reach-of-corrections.ts`,
    find: 'select i.lot_id from down join fact.lot_input i on i.input_id = down.id',
    replace: 'select i.lot_id from down join fact.lot_input i on false and i.input_id = down.id',
    test: 'corrections-against-walk',
  },
  'a fact that was corrected still counts': {
    file: `${service}/platform/composition/refresh-places.ts`,
    find: "where u.into_id = any($1) and ${standing('u')}",
    replace: 'where u.into_id = any($1)',
    test: 'corrections-against-walk',
  },
  'a search reads each of its statements as of another instant': {
    file: `${service}/platform/database/read-as-one.ts`,
    find: "'REPEATABLE READ'",
    replace: "'READ COMMITTED'",
    test: 'races-of-searches',
  },
  'what a bucket is made of stays when the bucket was mixed': {
    file: `${service}/lots/amend-lot.ts`,
    find: 'if (happenedAt) await moveInputs(fact, old, happenedAt);',
    replace: '',
    test: 'made-of-itself',
  },
  'a bucket does not follow what its tank or gun turns out to have held': {
    file: `${service}/platform/lots/follow-draws.ts`,
    find: "for (const table of ['used', 'lot_input'] as const) {",
    replace: "for (const table of ['used'] as const) {",
    test: 'random-weeks',
  },
  'the weakest basis on the way is forgotten': {
    file: 'libs/genealogy/src/mix-composition.ts',
    find: 'addend.weakness = Math.max(addend.weakness, weakness, portion.weakness ?? 0);',
    replace: 'addend.weakness = 0;',
    test: 'basis',
  },
};

/** Replaces the text of the fault that the environment names; a fault whose text is not found throws. */
export function applyFault(source, path) {
  const fault = PLANTED[process.env.FAULT ?? ''];
  if (!fault || !path.endsWith(fault.file)) return source;
  const parts = source.split(fault.find);
  if (parts.length !== 2) {
    throw new Error(`Planted fault: its text stands ${parts.length - 1} times in ${fault.file}`);
  }
  return parts.join(fault.replace);
}
