import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { checkLaterHead, consistencyProof, type Hash, type LaterHead } from '@hull-record/evidence';
import { journalEntries, OTHER_KEY, signedJournal } from '../../support/signed-journal.js';

const ENTRIES = journalEntries(30);
const LATER = '2026-05-02T06:00:00.000Z';

const grown = (first: number, second: number, told: { plant?: string; at?: string } = {}): LaterHead => {
  const held = signedJournal(ENTRIES.slice(0, first));
  const later = signedJournal(ENTRIES.slice(0, second), { at: LATER, ...told });
  return { held: held.head, later: later.head, proof: consistencyProof(first, second, later.read) };
};

describe('a later head', () => {
  it('holds against any head held before, when entries were only appended', () => {
    fc.assert(
      fc.property(fc.nat(30), fc.nat(30), (a, b) => {
        expect(checkLaterHead(grown(Math.min(a, b), Math.max(a, b)))).toBeNull();
      }),
    );
  });

  it('holds also when another key signed it: who is trusted is another question', () => {
    const { held, proof } = grown(7, 20);
    const later = signedJournal(ENTRIES.slice(0, 20), { at: LATER }, OTHER_KEY).head;
    expect(checkLaterHead({ held, later, proof })).toBeNull();
  });

  it('does not hold when an entry under the head held was changed, left out or put in', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.nat(9), fc.nat(), (first, more, which) => {
        const held = signedJournal(ENTRIES.slice(0, first)).head;
        const [at, size] = [which % first, first + more];
        const changed = [
          ENTRIES.slice(0, size).with(at, 'changed'),
          ENTRIES.slice(0, size + 1).toSpliced(at, 1),
          ENTRIES.slice(0, size).toSpliced(at, 0, 'put in').slice(0, size),
        ];
        for (const entries of changed) {
          const later = signedJournal(entries, { at: LATER });
          const proof = consistencyProof(first, size, later.read);
          expect(checkLaterHead({ held, later: later.head, proof })).toMatchObject({
            at: more === 0 ? '/later/root' : '/proof',
          });
        }
      }),
    );
  });

  const whole = grown(7, 20);

  it.each<[string, LaterHead, string]>([
    ['a proof cut short', { ...whole, proof: whole.proof.slice(1) }, '/proof'],
    ['a proof with a hash too many', { ...whole, proof: [...whole.proof, whole.proof[0] as Hash] }, '/proof'],
    ['the journal of another plant', grown(7, 20, { plant: 'NORTH' }), '/later/plant'],
    ['an earlier time', grown(7, 20, { at: '2026-04-11T09:29:59.999Z' }), '/later/at'],
    ['fewer entries', { ...whole, held: whole.later, later: whole.held }, '/later/size'],
    ['a held head that was changed', { ...whole, held: { ...whole.held, size: 8 } }, '/held/signature'],
    ['a later head that was changed', { ...whole, later: { ...whole.later, size: 21 } }, '/later/signature'],
  ])('does not hold with %s', (_what, given, pointer) => {
    expect(checkLaterHead(given)).toMatchObject({ at: pointer });
  });
});
