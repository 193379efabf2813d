import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { Room } from '../../../apps/service/src/cases/inputs/room.js';

interface Filled {
  readonly list: Uint32Array | Float64Array;
  readonly value: number;
  readonly count: number;
}

const fill = (room: Room, { shares, most, count, value }: Asked): Filled => {
  const pieces = shares ? room.shares : room.places;
  const list = pieces.for(most);
  expect(list.length).toBeGreaterThanOrEqual(most);
  list.fill(value, 0, count);
  return { list: pieces.take(count), value, count };
};

const isIntact = ({ list, value, count }: Filled): boolean =>
  list.length === count && list.every((each) => each === value);

interface Asked {
  readonly shares: boolean;
  readonly most: number;
  readonly count: number;
  readonly value: number;
}

const asked = fc
  .record({
    shares: fc.boolean(),
    most: fc.oneof(fc.nat(500), fc.constantFrom(1 << 17, 1 << 18, (1 << 18) + 1)),
    part: fc.nat(100),
    value: fc.integer({ min: 1, max: 1000 }),
  })
  .map(({ part, ...each }): Asked => ({ ...each, count: Math.floor((each.most * part) / 100) }));

describe('room for lists', () => {
  it('keeps every list as it was filled until it is left, beside others and after others left theirs', () => {
    fc.assert(
      fc.property(fc.array(asked, { maxLength: 12 }), fc.array(asked, { maxLength: 12 }), (one, other) => {
        const before = new Room();
        for (const each of other) fill(before, each);
        before.leave();
        const rooms = [new Room(), new Room()] as const;
        const filled = one.map((each, i) => fill(rooms[i % 2 === 0 ? 0 : 1], each));
        expect(filled.every(isIntact)).toBe(true);
        rooms[0].leave();
        const more = new Room();
        for (const each of other) fill(more, each);
        expect(filled.filter((_, i) => i % 2 === 1).every(isIntact)).toBe(true);
        rooms[1].leave();
        more.leave();
      }),
      { numRuns: 40 },
    );
  });

  it('gives what was left to the next one, and not what is larger than all others', () => {
    const room = new Room();
    const first = room.places.for(10).buffer;
    const large = room.places.for((1 << 18) + 1).buffer;
    room.leave();
    const next = new Room();
    expect(next.places.for(10).buffer).toBe(first);
    expect(next.places.for(1 << 18).buffer).not.toBe(large);
    next.leave();
  });

  it('is not left twice: what is given away is nobody else’s', () => {
    const room = new Room();
    room.places.for(10);
    room.leave();
    room.leave();
    const [one, other] = [new Room(), new Room()];
    expect(one.places.for(1).buffer).not.toBe(other.places.for(1).buffer);
  });
});
