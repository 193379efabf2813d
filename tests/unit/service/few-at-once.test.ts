import { setImmediate } from 'node:timers/promises';
import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { fewAtOnce } from '../../../apps/service/src/platform/few-at-once.js';

describe('work of which a few run at once', () => {
  it('begins in its order, never more than so many together, and as many as that', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 5 }),
        fc.array(fc.integer({ min: 1, max: 6 }), { maxLength: 20 }),
        async (count, turns) => {
          const inTurn = fewAtOnce(count);
          const begun: number[] = [];
          let running = 0;
          let most = 0;
          const work = turns.map((wait, i) =>
            inTurn(async () => {
              begun.push(i);
              running += 1;
              most = Math.max(most, running);
              for (let turn = 0; turn < wait; turn += 1) await setImmediate();
              running -= 1;
              return i;
            }),
          );
          expect(await Promise.all(work)).toEqual(turns.map((_, i) => i));
          expect(begun).toEqual(turns.map((_, i) => i));
          expect(most).toBe(Math.min(count, turns.length));
        },
      ),
      { numRuns: 50 },
    );
  });

  it('makes room when it fails', async () => {
    const inTurn = fewAtOnce(1);
    await expect(inTurn(() => Promise.reject(new Error('it failed')))).rejects.toThrow('it failed');
    expect(await inTurn(() => Promise.resolve('done'))).toBe('done');
  });
});
