import fc from 'fast-check';
import { describe, expect, it } from '@jest/globals';
import type { MapMark } from '@hull-record/paper';
import { layOutMap } from '../../../libs/paper/src/hull-map-layout.js';
import { NAME_HEIGHT, RING, type Labelled } from '../../../libs/paper/src/map-labels.js';
import { SKIN } from '../../support/paper-views.js';

const WIDTH = 510;
const shell = (mark: string, fromTransomMm: number, girthMm: number, side: 'port' | 'starboard' = 'port'): MapMark => ({
  mark,
  place: { surface: 'shell', side, fromTransomMm, girthMm },
  state: 'open',
});
const layOut = (
  marks: readonly MapMark[],
  seenFrom: 'outside, from below' | 'outside, from above' = 'outside, from below',
) => layOutMap({ skin: SKIN, seenFrom, marks }, WIDTH, (name) => name.length * 5);

describe('the hull map on paper', () => {
  it('is drawn to the scale it states', () => {
    const { scale, toPaper } = layOut([]);
    const length = Math.abs(toPaper({ x: SKIN.lengthMm, y: 0 }).x - toPaper({ x: 0, y: 0 }).x);
    expect((length * 25.4) / 72).toBeCloseTo(SKIN.lengthMm / scale, 6);
    const girth = toPaper({ x: 0, y: 0 }).y - toPaper({ x: 0, y: 1000 }).y;
    expect((girth * 25.4) / 72).toBeCloseTo(1000 / scale, 6);
  });

  it('fits the page at the largest whole scale', () => {
    const { scale, height, toPaper } = layOut([]);
    expect(Number.isInteger(scale)).toBe(true);
    expect(height).toBeLessThanOrEqual(290);
    expect(toPaper({ x: SKIN.lengthMm, y: 0 }).x).toBeGreaterThanOrEqual(0);
    expect(toPaper({ x: -1200, y: 0 }).x).toBeLessThanOrEqual(WIDTH);
  });

  it('has port up always, the bow left from below and right from above', () => {
    for (const seenFrom of ['outside, from below', 'outside, from above'] as const) {
      const { labelled, toPaper } = layOut([shell('P', 3000, 900), shell('S', 3000, 900, 'starboard')], seenFrom);
      const [port, starboard] = labelled;
      expect(port?.at.y).toBeLessThan(starboard?.at.y ?? 0);
      const bowLeft = toPaper({ x: SKIN.lengthMm, y: 0 }).x < toPaper({ x: 0, y: 0 }).x;
      expect(bowLeft).toBe(seenFrom === 'outside, from below');
    }
  });

  it('puts a lone name beside its ring and leads a line to one of two that would overlap', () => {
    const alone = layOut([shell('D1', 3000, 900)]).labelled[0];
    expect(alone?.led).toBe(false);
    const crowd = Array.from({ length: 12 }, (_, i) => shell(`D${i}`, 3000 + i, 900));
    expect(layOut(crowd).labelled.some(({ led }) => led)).toBe(true);
  });

  it('prints no name over another name or over a ring, whatever the marks', () => {
    const marks = fc.array(
      fc.record({ x: fc.integer({ min: 0, max: 8600 }), girth: fc.integer({ min: 0, max: 380 }) }),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(marks, (spots) => {
        const { labelled, unnamed } = layOut(spots.map(({ x, girth }, i) => shell(`D${i}`, x, girth)));
        expect(labelled).toHaveLength(spots.length);
        const boxes = labelled.flatMap(nameBox);
        expect(boxes.length + unnamed.length).toBe(spots.length);
        for (const [i, box] of boxes.entries()) {
          expect(boxes.slice(i + 1).some((other) => clash(box, other))).toBe(false);
          expect(
            labelled.some(({ at }) =>
              clash(box, { x: at.x - RING, y: at.y - RING, width: 2 * RING, height: 2 * RING }),
            ),
          ).toBe(false);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('does not draw a mark whose place is not on the skin', () => {
    const { labelled, offSkin } = layOut([shell('D1', 3000, 900), shell('D2', 3000, 9000), shell('D3', -1, 0)]);
    expect(labelled.map(({ mark }) => mark.mark)).toEqual(['D1']);
    expect(offSkin).toEqual(['D2', 'D3']);
  });
});

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const nameBox = ({ name, width }: Labelled): readonly Box[] =>
  name === undefined ? [] : [{ ...name, width, height: NAME_HEIGHT }];

const clash = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
