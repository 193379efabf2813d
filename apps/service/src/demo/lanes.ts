import { fewAtOnce } from '../platform/few-at-once.js';

/** What a task touches: it waits for what changed the one, and for everybody who used the other. */
export interface Touches {
  readonly uses: readonly string[];
  readonly changes: readonly string[];
}

/** How many tasks run at once: as many as two processors keep busy, with the database on one of them. */
const LANES = 3;

/** How far ahead of the oldest task that still runs others may begin. */
const AHEAD = 24;

/**
 * Runs tasks in their order as far as one has to do with another, and several at once where none has: a task that uses
 * something waits for those before it that changed it, and one that changes it waits for those that used it.
 *
 * Ends when all have ended, or after the first failure when those that run have ended; then it throws that failure.
 */
export const inLanes = async <T>(
  tasks: Iterable<T>,
  touches: (task: T) => Touches,
  run: (task: T) => Promise<void>,
): Promise<void> => {
  const changed = new Map<string, Promise<void>>();
  const used = new Map<string, Promise<void>[]>();
  const failures: unknown[] = [];
  const begun: Promise<void>[] = [];
  const slot = fewAtOnce(LANES);
  for (const task of tasks) {
    const { uses, changes } = touches(task);
    const before = [
      ...[...uses, ...changes].flatMap((key) => changed.get(key) ?? []),
      ...changes.flatMap((key) => used.get(key) ?? []),
    ];
    const ended = Promise.all(before)
      .then(() => slot(() => (failures.length > 0 ? Promise.resolve() : run(task))))
      .catch((failure: unknown) => void failures.push(failure));
    for (const key of uses) {
      const others = used.get(key);
      if (others) others.push(ended);
      else used.set(key, [ended]);
    }
    for (const key of changes) {
      changed.set(key, ended);
      used.delete(key);
    }
    begun.push(ended);
    if (begun.length >= AHEAD) await begun.shift();
    if (failures.length > 0) break;
  }
  await Promise.all(begun);
  if (failures.length > 0) throw failures[0];
};
