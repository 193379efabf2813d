import { describe, expect, it } from '@jest/globals';
import { valueAt, withValueAt } from '../../../apps/web/src/outbox/at-pointer.js';

const body = { doneBy: ['LAM-1', 'LAM-X'], used: [{ amount: { quantity: '4' } }], 'a/b': 1 };

describe('a value of an entry by its JSON pointer (RFC 6901)', () => {
  it.each([
    ['/doneBy/1', 'LAM-X'],
    ['/used/0/amount/quantity', '4'],
    ['/a~1b', 1],
    ['/used/3/amount', undefined],
  ] as const)('%s is %s', (pointer, value) => {
    expect(valueAt(body, pointer)).toBe(value);
  });

  it('is changed alone', () => {
    expect(withValueAt(body, '/doneBy/1', 'LAM-2')).toEqual({ ...body, doneBy: ['LAM-1', 'LAM-2'] });
    expect(withValueAt(body, '/used/0/amount/quantity', '5')).toEqual({
      ...body,
      used: [{ amount: { quantity: '5' } }],
    });
    expect(withValueAt(body, '/note', 'x')).toEqual({ ...body, note: 'x' });
    expect(body.doneBy[1]).toBe('LAM-X');
  });
});
