/** Runs work when its turn has come. */
export type InTurn = <T>(work: () => Promise<T>) => Promise<T>;

/**
 * Lets so many run at once; the others wait in the order in which they came.
 *
 * @param count at least 1
 */
export const fewAtOnce = (count: number): InTurn => {
  const waiting: (() => void)[] = [];
  let free = count;
  return async (work) => {
    if (free > 0) free -= 1;
    else await new Promise<void>((resolve) => waiting.push(resolve));
    try {
      return await work();
    } finally {
      const next = waiting.shift();
      if (next) next();
      else free += 1;
    }
  };
};
