import { describe, expect, it } from '@jest/globals';
import { largestShare, MassMissing, share } from '@hull-record/genealogy';

const row = (place: string, role: string, kg: number) => ({ place, role, kg });

describe('the share of a source', () => {
  it('is its mass over the mass of the role, not clamped', () => {
    expect(share(1, 8)).toBe(0.125);
    expect(share(0, 8)).toBe(0);
    expect(share(9, 8)).toBe(1.125);
  });

  it.each([0, -1, NaN, Infinity])('cannot be taken of %d kg', (kg) => {
    expect(() => share(1, kg)).toThrow(MassMissing);
  });
});

describe('the largest share of a source on a hull', () => {
  const all = [
    row('layer-1', 'resin', 10),
    row('layer-1', 'resin', 30),
    row('layer-1', 'catalyst', 0.5),
    row('layer-2', 'resin', 20),
  ];

  it('sums the paths within a layer before it compares: 3 + 3 of 40 kg beats 2 of 20 kg', () => {
    const source = [row('layer-1', 'resin', 3), row('layer-2', 'resin', 2), row('layer-1', 'resin', 3)];
    expect(largestShare(source, all)).toEqual({ place: 'layer-1', role: 'resin', share: 0.15 });
  });

  it('keeps roles apart', () => {
    const source = [row('layer-1', 'resin', 4), row('layer-1', 'catalyst', 0.25)];
    expect(largestShare(source, all)).toEqual({ place: 'layer-1', role: 'catalyst', share: 0.5 });
  });

  it('is none where the source is nowhere', () => {
    expect(largestShare([], all)).toBeNull();
  });

  it('is refused where the place has none of the role', () => {
    expect(() => largestShare([row('layer-2', 'catalyst', 1)], all)).toThrow(MassMissing);
  });
});
