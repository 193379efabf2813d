import type { EntityTarget, FindOptionsWhere } from 'typeorm';
import type { Fact } from './fact.js';
import type { FactRow, FilledIn } from './fact-row.js';

/** Values that change in a new version; undefined leaves the old one. */
type Changes<E extends FactRow> = { readonly [K in keyof Omit<E, FilledIn>]?: E[K] | undefined } & {
  readonly happenedAt?: Date | undefined;
};

/** Appends a new version of a fact: as the old one, but for the changes. The old one stays as it is. */
export const insertVersion = async <E extends FactRow>(
  fact: Fact,
  entity: EntityTarget<E>,
  oldId: string,
  newId: string,
  changes: Changes<E>,
): Promise<void> => {
  const old = await fact.tx.findOneByOrFail(entity, { id: oldId } as FindOptionsWhere<E>);
  const changed = Object.fromEntries(Object.entries(changes).filter(([, value]) => value !== undefined));
  const { root, happenedAt } = old;
  await fact.insert(entity, { ...old, happenedAt, ...changed, id: newId, root });
};

/** The version of a fact with this id, as the database holds it. */
export const readVersion = <E extends FactRow>(fact: Fact, entity: EntityTarget<E>, id: string): Promise<E> =>
  fact.tx.findOneByOrFail(entity, { id } as FindOptionsWhere<E>);
