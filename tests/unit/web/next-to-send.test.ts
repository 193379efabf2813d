import { describe, expect, it } from '@jest/globals';
import type { Entry } from '../../../apps/web/src/outbox/entry.js';
import { nextToSend, waitingBehind } from '../../../apps/web/src/outbox/next-to-send.js';

const entry = (order: number, lanes: string, state: Entry['state'] = 'waiting'): Entry => ({
  ...{ order, id: `e${order}`, path: '/api/layers', parameters: {}, lanes: lanes.split(' '), about: '', detail: '' },
  ...{ under: 'device', hasPhoto: false, state, problem: null, aside: null },
  body: { id: `e${order}`, enteredBy: 'LAM-1', device: 'TAB-1', happenedAt: '2026-01-05T08:00:00Z' },
});

describe('what is sent next', () => {
  it.each([
    ['nothing when nothing is there', [], null],
    ['the first that waits', [entry(1, 'A'), entry(2, 'A')], 'e1'],
    [
      'nothing of a part whose entry was refused, but of another',
      [entry(1, 'A', 'refused'), entry(2, 'A'), entry(3, 'B')],
      'e3',
    ],
    [
      'not one of several parts when one of them is held',
      [entry(1, 'A', 'refused'), entry(2, 'A B'), entry(3, 'B')],
      null,
    ],
    ['what comes behind one that was set aside', [entry(1, 'A', 'aside'), entry(2, 'A')], 'e2'],
  ] as const)('%s', (_, entries, expected) => {
    expect(nextToSend(entries)?.id ?? null).toBe(expected);
  });

  it('passes over what cannot go now, with all that follows on its part', () => {
    const entries = [entry(1, 'A'), entry(2, 'A'), entry(3, 'B')];
    expect(nextToSend(entries, new Set(['e1']))?.id).toBe('e3');
  });

  it('counts what waits behind a refusal, also over a second part', () => {
    const entries = [entry(1, 'A', 'refused'), entry(2, 'A B'), entry(3, 'B'), entry(4, 'C')];
    expect(waitingBehind(entries, entries[0] as Entry)).toBe(2);
  });
});
