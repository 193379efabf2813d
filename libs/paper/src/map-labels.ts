import type { Box, PaperPoint } from './geometry.js';
import type { MapMark } from './hull-map-view.js';

/** Radius of a mark's ring, points. */
export const RING = 4.2;
/** Height of a name, points. */
export const NAME_HEIGHT = 10;

/** A mark to be named: where its ring is and how wide its name, points. */
export interface Spot {
  readonly mark: MapMark;
  readonly at: PaperPoint;
  readonly width: number;
}

/** A mark with the upper left corner of its name, if room was found, and whether a line must lead there. */
export interface Labelled extends Spot {
  readonly name?: PaperPoint;
  readonly led: boolean;
}

const DISTANCES = [7, 13, 20, 28, 37, 47, 58, 70, 84, 100, 120];
const DIRECTIONS = 24;

/**
 * Puts names beside their rings so that no name lies on a ring, on another name or on the line that leads to one.
 *
 * Takes the nearest free room, to the right first. `band` at the top and bottom is kept free for the words there.
 */
export const placeLabels = (
  spots: readonly Spot[],
  area: { readonly width: number; readonly height: number; readonly band: number },
): { readonly labelled: readonly Labelled[]; readonly unnamed: readonly string[] } => {
  const rings = spots.map(({ at }) => around(at, RING + 1));
  const taken: Box[] = [];
  const lines: (readonly PaperPoint[])[] = [];
  const inside = (r: Box): boolean =>
    r.x >= 0 && r.y >= area.band && r.x + r.width <= area.width && r.y + r.height <= area.height - area.band;
  const labelled = spots.map((spot): Labelled => {
    const found = candidates(spot).find(({ box, line }) => {
      if (!inside(box) || rings.some((ring) => overlap(ring, box)) || taken.some((other) => overlap(other, box)))
        return false;
      return !lines.some((other) => crosses(other, box)) && !taken.some((other) => crosses(line, other));
    });
    if (found === undefined) return { ...spot, led: false };
    taken.push(found.box);
    if (found.led) lines.push(found.line);
    return { ...spot, name: { x: found.box.x, y: found.box.y }, led: found.led };
  });
  return { labelled, unnamed: labelled.filter(({ name }) => name === undefined).map(({ mark }) => mark.mark) };
};

const candidates = ({ at, width }: Spot) =>
  DISTANCES.flatMap((distance, ring) =>
    Array.from({ length: DIRECTIONS }, (_, i) => {
      const turn = (i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * ((2 * Math.PI) / DIRECTIONS);
      const [dx, dy] = [Math.cos(turn), Math.sin(turn)];
      const middle = { x: at.x + dx * (distance + width / 2), y: at.y + dy * (distance + NAME_HEIGHT / 2) };
      const box = { x: middle.x - width / 2, y: middle.y - NAME_HEIGHT / 2, width, height: NAME_HEIGHT };
      return { box, line: between(at, nearestIn(box, at)), led: ring > 0 };
    }),
  );

/** The point of a box that is nearest to a spot; a leader ends there. */
export const nearestIn = (box: Box, at: PaperPoint): PaperPoint => ({
  x: Math.min(Math.max(at.x, box.x), box.x + box.width),
  y: Math.min(Math.max(at.y, box.y), box.y + box.height),
});

const around = ({ x, y }: PaperPoint, r: number): Box => ({ x: x - r, y: y - r, width: 2 * r, height: 2 * r });

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** Points along a line, close enough together that none jumps over a name. */
const between = (from: PaperPoint, to: PaperPoint): readonly PaperPoint[] => {
  const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 3));
  return Array.from({ length: steps + 1 }, (_, i) => ({
    x: from.x + ((to.x - from.x) * i) / steps,
    y: from.y + ((to.y - from.y) * i) / steps,
  }));
};

const crosses = (line: readonly PaperPoint[], box: Box): boolean =>
  line.some(({ x, y }) => x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height);
