import fc from 'fast-check';
import type { Act } from './act.js';
import { join, makeLayer, moveLayer, repair, touchUp, use, withdrawPlace } from './boats.js';
import { make, withdrawInput } from './buckets.js';
import { drawAtAnotherTime, moveUse, nameAnother, weighAgain, withdrawUse } from './draws.js';
import { changeState, count, lose, receive, withdrawLot } from './store.js';
import { fill, hookUp, moveHookUp, moveMade, withdrawFill, withdrawHookUp } from './tank-and-gun.js';

export type { Act } from './act.js';

/** Every act of the shop, with how often it happens. */
const ACTS: readonly (readonly [number, fc.Arbitrary<Act>])[] = [
  [3, receive],
  [1, lose],
  [1, count],
  [1, changeState],
  [1, withdrawLot],
  [5, fill],
  [1, withdrawFill],
  [2, moveMade],
  [5, hookUp],
  [1, moveHookUp],
  [1, withdrawHookUp],
  [6, make],
  [1, withdrawInput],
  [4, makeLayer],
  [2, join],
  [1, repair],
  [1, touchUp],
  [9, use],
  [1, withdrawPlace],
  [1, moveLayer],
  [1, weighAgain],
  [1, nameAnother],
  [1, withdrawUse],
  [1, moveUse],
  [1, drawAtAnotherTime],
];

/** A week: a lot and a layer to begin with, and acts of every kind. */
export const week = (acts: number): fc.Arbitrary<readonly Act[]> =>
  fc
    .tuple(
      receive,
      makeLayer,
      fc.array(fc.oneof(...ACTS.map(([weight, arbitrary]) => ({ weight, arbitrary }))), {
        minLength: Math.ceil(acts / 2),
        maxLength: acts,
        size: 'max',
      }),
    )
    .map(([first, second, rest]) => [first, second, ...rest]);
