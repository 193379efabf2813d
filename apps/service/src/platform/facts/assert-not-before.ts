import { Unprocessable } from '../refusals.js';
import type { Fact } from './fact.js';

/**
 * What follows from another fact happened after it. A year that was mistyped would else move what is worked out from it:
 * a letter tells which claims were prompted, and until when hulls are compared.
 *
 * @param what the other fact, as a sentence begins with it
 * @throws Unprocessable
 */
export const assertNotBefore = (fact: Fact, earlier: Date | string, what: string): void => {
  const from = new Date(earlier);
  if (fact.happenedAt < from)
    throw new Unprocessable(
      'before-its-ground',
      `${what} is from ${from.toISOString()} on: this cannot have happened before it. Look at the day and the year.`,
      '/happenedAt',
    );
};
