import { InputInvalid } from '../errors.js';

/** A hull by month of production, with its ages in whole months in service at each claim and the age it was watched to. */
export interface Built {
  /** Whole months since any fixed month. */
  readonly built: number;
  /** Month in which it went into service. */
  readonly inService: number;
  readonly monthsWatched: number;
  /** Whole months in service from which on it was watched; 0 when left out. */
  readonly monthsBefore?: number;
  readonly claimMonths: readonly number[];
}

/** Claims and hulls at risk of one month of production at one age, or of a row, column or diagonal. */
export interface Cell {
  readonly claims: number;
  readonly atRisk: number;
}

/** A month of production by months in service, with what is summed along each direction. */
export interface Triangle {
  readonly cells: ReadonlyMap<number, readonly Cell[]>;
  /** By month of production: trouble of a build or a lot. */
  readonly rows: ReadonlyMap<number, Cell>;
  /** By months in service: ageing. */
  readonly columns: readonly Cell[];
  /** By calendar month: a recall letter, a hot summer. */
  readonly diagonals: ReadonlyMap<number, Cell>;
}

type Counted = { -readonly [K in keyof Cell]: Cell[K] };

/**
 * Claims by month of production and months in service; hulls at risk are those watched through the month.
 *
 * Hulls of the same three months are counted together: a plant of twenty years has few of them and hundreds of thousands of
 * hulls. Throws InputInvalid for a claim in a month in which the hull was not watched: it would be lost.
 */
export const triangle = (hulls: readonly Built[]): Triangle => {
  const cells = new Map<number, Counted[]>();
  const rows = new Map<number, Counted>();
  const columns: Counted[] = [];
  const diagonals = new Map<number, Counted>();
  const add = ({ built, inService }: Built, month: number, count: Cell): void => {
    const row = cells.get(built) ?? [];
    cells.set(built, row);
    for (const cell of [
      (row[month] ??= { claims: 0, atRisk: 0 }),
      (columns[month] ??= { claims: 0, atRisk: 0 }),
      cellOf(rows, built),
      cellOf(diagonals, inService + month),
    ]) {
      cell.claims += count.claims;
      cell.atRisk += count.atRisk;
    }
  };
  for (const { hull, atRisk } of alike(hulls))
    for (let month = hull.monthsBefore ?? 0; month <= hull.monthsWatched; month += 1)
      add(hull, month, { claims: 0, atRisk });
  for (const hull of hulls)
    for (const month of hull.claimMonths) {
      if (!(Number.isInteger(month) && month >= (hull.monthsBefore ?? 0) && month <= hull.monthsWatched))
        throw new InputInvalid(
          'claim month',
          month,
          `a whole number from ${hull.monthsBefore ?? 0} to ${hull.monthsWatched}`,
        );
      add(hull, month, { claims: 1, atRisk: 0 });
    }
  return { cells, rows, columns, diagonals };
};

const cellOf = (cells: Map<number, Counted>, at: number): Counted => {
  const cell = cells.get(at) ?? { claims: 0, atRisk: 0 };
  cells.set(at, cell);
  return cell;
};

/** One hull of each of these months, with how many there are. */
const alike = (hulls: readonly Built[]): Iterable<{ readonly hull: Built; readonly atRisk: number }> => {
  const found = new Map<string, { hull: Built; atRisk: number }>();
  for (const hull of hulls) {
    const key = `${hull.built} ${hull.inService} ${hull.monthsBefore ?? 0} ${hull.monthsWatched}`;
    const own = found.get(key);
    if (own) own.atRisk += 1;
    else found.set(key, { hull, atRisk: 1 });
  }
  return found.values();
};
