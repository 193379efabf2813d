import { InputInvalid } from '../errors.js';

/** A hull by month of production, with its ages in whole months in service at each claim and the age it was watched to. */
export interface Built {
  /** Whole months since any fixed month. */
  readonly built: number;
  /** Month in which it went into service. */
  readonly inService: number;
  readonly monthsWatched: number;
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

const NONE: Cell = { claims: 0, atRisk: 0 };
const plus = (a: Cell = NONE, b: Cell): Cell => ({ claims: a.claims + b.claims, atRisk: a.atRisk + b.atRisk });

/**
 * Claims by month of production and months in service; hulls at risk are those watched through the month.
 *
 * Throws InputInvalid for a claim in a month in which the hull was not watched: it would be lost.
 */
export const triangle = (hulls: readonly Built[]): Triangle => {
  const cells = new Map<number, Cell[]>();
  const rows = new Map<number, Cell>();
  const columns: Cell[] = [];
  const diagonals = new Map<number, Cell>();
  for (const { built, inService, monthsWatched, claimMonths } of hulls) {
    for (const month of claimMonths)
      if (!(Number.isInteger(month) && month >= 0 && month <= monthsWatched))
        throw new InputInvalid('claim month', month, `a whole number from 0 to ${monthsWatched}`);
    const row = cells.get(built) ?? [];
    cells.set(built, row);
    for (let month = 0; month <= monthsWatched; month += 1) {
      const own = { claims: claimMonths.filter((claim) => claim === month).length, atRisk: 1 };
      row[month] = plus(row[month], own);
      rows.set(built, plus(rows.get(built), own));
      columns[month] = plus(columns[month], own);
      diagonals.set(inService + month, plus(diagonals.get(inService + month), own));
    }
  }
  return { cells, rows, columns, diagonals };
};
