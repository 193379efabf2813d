import { checkHead, type SignedTreeHead } from '@hull-record/evidence';
import type { EntityManager } from 'typeorm';
import { checkEntry, rowsOf } from './check-entry.js';
import { checkHeads, loadHeads } from './check-heads.js';
import { checkApart } from './check-apart.js';
import type { CheckedFiles } from './check-files.js';
import { checkLeftOver, checkPlants } from './check-other-tables.js';
import { checkAdded, checkRows, factTables, type FactTables } from './check-rows.js';
import { TreeAnew } from './check-tree.js';
import { fault, type TamperFault } from './fault.js';
import { type ReadEntry, sealedEntries, unsealedEntries } from './read-entries.js';

/** What one look over the whole database found. */
export interface Verified {
  readonly faults: readonly TamperFault[];
  readonly plants: readonly { readonly plant: string; readonly sealed: number; readonly unsealed: number }[];
  /** The heads that somebody else held and that fit. */
  readonly heldHeads: readonly SignedTreeHead[];
  /** What was erased by recorded acts, and is no fault; files are null where they were not looked at. */
  readonly erased: { readonly owners: number; readonly texts: number; readonly files: number | null };
}

/** The same with what was found of stored files. */
export const withFiles = (verified: Verified, { faults, erased }: CheckedFiles): Verified => ({
  ...verified,
  faults: [...verified.faults, ...faults].slice(0, FAULTS_AT_MOST),
  erased: { ...verified.erased, files: erased },
});

export interface ToVerify {
  /** Ids of the keys of the service. */
  readonly keys: ReadonlySet<string>;
  /** Heads that somebody else held. */
  readonly held: readonly SignedTreeHead[];
}

/** More than these are not listed: the first says enough. */
const FAULTS_AT_MOST = 200;

/**
 * Compares every row of facts with the journal, the journal with its tree, and the tree with every signed head.
 *
 * @param tx sees one instant, and need only read
 */
export const verifyDatabase = async (tx: EntityManager, { keys, held }: ToVerify): Promise<Verified> => {
  const tables = await factTables(tx);
  const faults: TamperFault[] = [];
  const plants: Verified['plants'][number][] = [];
  for (const { id, code } of await tx.query<{ id: string; code: string }[]>(
    'select id, code from fact.plant order by code',
  )) {
    const rows = await loadHeads(tx, id);
    const own = held.filter(({ plant }) => plant === code);
    const sizes = new Set([...rows.map(({ size }) => Number(size)), ...own.map(({ size }) => size)]);
    const tree = new TreeAnew(tx, id, sizes);
    for await (const some of sealedEntries(tx, id)) {
      await tree.append(some);
      faults.push(...(await checkSome(tx, tables, some)));
    }
    await tree.end();
    let unsealed = 0;
    for await (const some of unsealedEntries(tx, id)) {
      unsealed += some.length;
      faults.push(...(await checkSome(tx, tables, some)));
    }
    faults.push(...tree.faults, ...checkHeads(code, rows, tree.roots, keys), ...checkHeld(own, tree));
    plants.push({ plant: code, sealed: tree.size, unsealed });
  }
  faults.push(...(await checkAdded(tx, tables)), ...(await checkLeftOver(tx)));
  const apart = await checkApart(tx);
  faults.push(...(await checkPlants(tx)), ...apart.faults, ...ofNoPlant(held, plants));
  const erased = { ...apart.erased, files: null };
  return { faults: faults.slice(0, FAULTS_AT_MOST), plants, heldHeads: held, erased };
};

const checkSome = async (
  tx: EntityManager,
  tables: FactTables,
  some: readonly ReadEntry[],
): Promise<readonly TamperFault[]> => [
  ...some.flatMap(checkEntry),
  ...(await checkRows(tx, tables, some.flatMap(rowsOf))),
];

const checkHeld = (held: readonly SignedTreeHead[], tree: TreeAnew): readonly TamperFault[] =>
  held.flatMap((head) => {
    const name = `of the head held since ${head.at}`;
    const inItself = checkHead(head);
    if (inItself !== null)
      return [fault('changed', 'the journal', name, `the head does not hold together: ${inItself.why}`)];
    if (head.size > tree.size)
      return [fault('removed', 'the journal', name, `it had ${head.size} entries, and now has ${tree.size}.`)];
    if (head.size > 0 && tree.roots.get(head.size) !== head.root)
      return [fault('changed', 'the journal', name, `its first ${head.size} entries are not what they were.`)];
    return [];
  });

const ofNoPlant = (held: readonly SignedTreeHead[], plants: Verified['plants']): readonly TamperFault[] =>
  held
    .filter((head) => !plants.some(({ plant }) => plant === head.plant))
    .map((head) => fault('removed', 'the journal', `of plant ${head.plant}`, 'somebody holds a head of it.'));
