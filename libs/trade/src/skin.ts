/**
 * A girth line at one station: lengths along the skin from the keel, or from the centreline of a deck or liner.
 *
 * Millimetres. `xMm` counts forward from the transom, `edgeGirthMm` ends at the sheer or the molding's edge; chine and
 * waterline are left out where the station has none. Port and starboard are alike.
 */
export interface Station {
  readonly xMm: number;
  readonly edgeGirthMm: number;
  readonly chineGirthMm?: number | undefined;
  readonly waterlineGirthMm?: number | undefined;
}

/**
 * The outer skin of a molding as girths by station, linear between stations; enough to place a spot and to draw.
 *
 * Stations ascend from 0 to `lengthMm`. `transom` is left out for a molding without a flat stern.
 */
export interface Skin {
  readonly lengthMm: number;
  readonly stations: readonly Station[];
  readonly transom?: { readonly halfWidthMm: number; readonly heightMm: number } | undefined;
}

/** Something wrong with a skin; `path` is a JSON pointer into it, such as /stations/2/edgeGirthMm. */
export interface SkinProblem {
  readonly path: string;
  readonly message: string;
}

/** A line that runs along the skin. */
export type GirthLine = 'edgeGirthMm' | 'chineGirthMm' | 'waterlineGirthMm';

/** Everything wrong with a skin, empty when it can be used. The other functions assume a skin without problems. */
export const checkSkin = (skin: Skin): readonly SkinProblem[] => [
  ...(isPositive(skin.lengthMm) ? [] : [{ path: '/lengthMm', message: 'The length must be above 0 mm.' }]),
  ...checkEnds(skin),
  ...skin.stations.flatMap((station, i) => checkStation(station, skin.stations[i - 1], `/stations/${i}`)),
  ...checkTransom(skin.transom),
];

/** The girth of a line at a distance from the transom, linear between stations; undefined where the line is not given. */
export const girthAt = ({ stations }: Skin, xMm: number, line: GirthLine): number | undefined => {
  const after = stations.findIndex((station) => station.xMm >= xMm);
  const right = stations[after];
  if (right === undefined || right.xMm === xMm) return right?.[line];
  const left = stations[after - 1];
  const from = left?.[line];
  const to = right[line];
  if (left === undefined || from === undefined || to === undefined) return undefined;
  return from + ((to - from) * (xMm - left.xMm)) / (right.xMm - left.xMm);
};

const isPositive = (value: number): boolean => Number.isFinite(value) && value > 0;

const checkEnds = ({ stations, lengthMm }: Skin): readonly SkinProblem[] => {
  const problems: SkinProblem[] = [];
  if (stations.length < 2) problems.push({ path: '/stations', message: 'At least two stations are needed.' });
  const last = stations.length - 1;
  if (stations.length > 0 && stations[0]?.xMm !== 0) {
    problems.push({ path: '/stations/0/xMm', message: 'The first station stands at the transom, 0 mm.' });
  }
  if (last > 0 && stations[last]?.xMm !== lengthMm) {
    problems.push({ path: `/stations/${last}/xMm`, message: `The last station stands at the length, ${lengthMm} mm.` });
  }
  if (stations.length > 0 && stations.every(({ edgeGirthMm }) => edgeGirthMm === 0)) {
    problems.push({ path: '/stations', message: 'At least one station needs a girth above 0 mm.' });
  }
  return problems;
};

const checkStation = (station: Station, before: Station | undefined, path: string): readonly SkinProblem[] => {
  const problems: SkinProblem[] = [];
  if (!Number.isFinite(station.xMm) || (before !== undefined && !(station.xMm > before.xMm))) {
    problems.push({ path: `${path}/xMm`, message: 'Stations must be numbers and ascend from the transom forward.' });
  }
  const edge = station.edgeGirthMm;
  if (!Number.isFinite(edge) || edge < 0) {
    problems.push({ path: `${path}/edgeGirthMm`, message: 'A girth is 0 mm or more.' });
  }
  for (const line of ['chineGirthMm', 'waterlineGirthMm'] as const) {
    const girth = station[line];
    if (girth === undefined || (girth >= 0 && girth <= edge)) continue;
    problems.push({ path: `${path}/${line}`, message: `It must lie between 0 mm and the edge at ${edge} mm.` });
  }
  return problems;
};

const checkTransom = (transom: Skin['transom']): readonly SkinProblem[] =>
  transom === undefined
    ? []
    : (['halfWidthMm', 'heightMm'] as const)
        .filter((size) => !isPositive(transom[size]))
        .map((size) => ({ path: `/transom/${size}`, message: 'A size of the transom must be above 0 mm.' }));
