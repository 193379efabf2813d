import { TRANSOM_GAP_MM, type MapPoint } from '@hull-record/trade';

/** An area of one surface, mm: along from the transom (or up from the keel), across from the keel, port positive. */
export interface Area {
  readonly surface: 'shell' | 'transom';
  readonly along: readonly [from: number, to: number];
  readonly across: readonly [from: number, to: number];
}

/** A place of a point that was counted: on which surface, how far along and across, mm. */
export interface Spot {
  readonly surface: 'shell' | 'transom';
  readonly along: number;
  readonly across: number;
}

/** Where a spot is on the unrolled map. */
export const onMap = ({ surface, along, across }: Spot): MapPoint =>
  surface === 'shell' ? { x: along, y: across } : { x: -TRANSOM_GAP_MM - along, y: across };

const sorted = (a: number, b: number): readonly [number, number] => (a <= b ? [a, b] : [b, a]);
const toMm = (pair: readonly [number, number]): readonly [number, number] => [Math.round(pair[0]), Math.round(pair[1])];

/**
 * The area between two corners of the map. One that reaches over the gap between shell and transom is of the surface
 * that has more of it.
 */
export const areaBetween = (a: MapPoint, b: MapPoint): Area => {
  const [from, to] = sorted(a.x, b.x);
  const across = toMm(sorted(a.y, b.y));
  const gap = -TRANSOM_GAP_MM;
  if (to > 0 && to > gap - from) return { surface: 'shell', along: toMm([Math.max(0, from), to]), across };
  return { surface: 'transom', along: toMm([Math.max(0, gap - to), Math.max(0, gap - from)]), across };
};

/** Two corners of an area on the map. */
export const cornersOf = ({ surface, along, across }: Area): readonly [MapPoint, MapPoint] => [
  onMap({ surface, along: along[0], across: across[0] }),
  onMap({ surface, along: along[1], across: across[1] }),
];

/** Whether a spot is in an area. */
export const isIn = ({ surface, along, across }: Area, spot: Spot): boolean =>
  spot.surface === surface &&
  spot.along >= along[0] &&
  spot.along <= along[1] &&
  spot.across >= across[0] &&
  spot.across <= across[1];

/** An area as it stands in an address: surface, along from and to, across from and to. */
export const areaToText = ({ surface, along, across }: Area): string => [surface, ...along, ...across].join(',');

/** The area that an address names; undefined when it names none that can be understood. */
export const areaFromText = (text: string | undefined): Area | undefined => {
  const [surface, ...rest] = (text ?? '').split(',');
  const numbers = rest.map((each) => (each.trim() === '' ? Number.NaN : Number(each)));
  const [a, b, c, d] = numbers;
  if ((surface !== 'shell' && surface !== 'transom') || numbers.length !== 4) return undefined;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return undefined;
  return numbers.every(Number.isFinite) ? { surface, along: sorted(a, b), across: sorted(c, d) } : undefined;
};
