import { at } from '../numbers.js';

type Point = readonly number[];
interface Corner {
  readonly point: Point;
  readonly value: number;
}

/**
 * The place of a minimum by the simplex of Nelder and Mead (1965), begun anew until it stays where it is.
 *
 * For smooth functions of two or three numbers; Infinity keeps it out of where a function has no value.
 */
export const minimize = (of: (point: Point) => number, start: Point, step = 0.5): Point => {
  let best = shrink(of, start, step);
  for (let i = 0; i < 20; i += 1) {
    const again = shrink(of, best.point, step / 4);
    const gained = best.value - again.value;
    if (again.value < best.value) best = again;
    if (!(gained > 1e-13 * (1 + Math.abs(best.value)))) break;
  }
  return best.point;
};

const shrink = (of: (point: Point) => number, start: Point, step: number): Corner => {
  const corner = (point: Point): Corner => ({ point, value: of(point) });
  let simplex = [start, ...start.map((_, i) => start.map((x, j) => (i === j ? x + step : x)))].map(corner);
  for (let i = 0; i < 400 * start.length; i += 1) {
    simplex.sort((a, b) => a.value - b.value);
    const [best, worst] = [simplex[0] as Corner, simplex.at(-1) as Corner];
    if (worst.value - best.value <= 1e-15 * (1 + Math.abs(best.value)) && size(simplex) < 1e-9) break;
    simplex = moved(simplex, corner);
  }
  return simplex.reduce((a, b) => (b.value < a.value ? b : a));
};

/** One step: reflect the worst corner through the middle of the others, stretch or pull it in; else draw all together. */
const moved = (ordered: readonly Corner[], corner: (point: Point) => Corner): Corner[] => {
  const others = ordered.slice(0, -1);
  const [best, worst] = [ordered[0] as Corner, ordered.at(-1) as Corner];
  const next = (others.at(-1) as Corner).value;
  const middle = best.point.map((_, i) => others.reduce((all, { point }) => all + at(point, i), 0) / others.length);
  const towards = (by: number): Corner => corner(middle.map((m, i) => m + by * (m - at(worst.point, i))));
  const reflected = towards(1);
  if (reflected.value < best.value) {
    const stretched = towards(2);
    return [...others, stretched.value < reflected.value ? stretched : reflected];
  }
  if (reflected.value < next) return [...others, reflected];
  const pulled = towards(reflected.value < worst.value ? 0.5 : -0.5);
  if (pulled.value < Math.min(reflected.value, worst.value)) return [...others, pulled];
  return ordered.map(({ point }) => corner(point.map((x, i) => (x + at(best.point, i)) / 2)));
};

const size = (simplex: readonly Corner[]): number => {
  const [{ point: first }, ...rest] = simplex as [Corner, ...Corner[]];
  return rest.reduce((most, { point }) => Math.max(most, ...point.map((x, i) => Math.abs(x - at(first, i)))), 0);
};
