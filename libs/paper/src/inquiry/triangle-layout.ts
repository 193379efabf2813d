import type { TriangleView } from './triangle-view.js';

/** Hull-months and claims of one cell. */
export interface TriangleCell {
  readonly claims: number;
  readonly atRisk: number;
}

/** Hulls begun in one period. */
export interface TriangleRow {
  readonly label: string;
  readonly cells: readonly TriangleCell[];
  readonly hulls: number;
  readonly claims: number;
}

/** The triangle as it goes on a page: months taken together so that it does. */
export interface TriangleLayout {
  readonly monthsDown: number;
  readonly monthsAcross: number;
  readonly columns: number;
  readonly cellWidth: number;
  /** Claims per hull-month in the cell with the most; 0 when there are none. */
  readonly most: number;
  readonly rows: readonly TriangleRow[];
}

const DOWN = [1, 3, 12, 60, 240] as const;
const ACROSS = [1, 3, 6, 12, 60, 240] as const;
/** More rows would not go on a page with its words. */
const MOST_ROWS = 42;
/** Widths of a cell, points: one digit goes into the least. */
const LEAST_WIDTH = 9;
const GREATEST_WIDTH = 24;

/**
 * Lays the triangle out in a width, taking as few months together as will do.
 *
 * @param width room for the cells, points
 * @param widthOf width of a number as it is printed, points
 */
export const layOutTriangle = (
  { rows }: TriangleView,
  width: number,
  widthOf: (count: number) => number,
): TriangleLayout => {
  const monthsDown = DOWN.find((months) => periodsOf(rows, months).size <= MOST_ROWS) ?? DOWN[DOWN.length - 1] ?? 1;
  const most = Math.max(0, ...rows.map(({ cells }) => cells.length));
  const layouts = ACROSS.map((months) => layoutOf(rows, { monthsDown, monthsAcross: months, most, width }));
  const fits = ({ cellWidth, rows: own }: TriangleLayout): boolean =>
    own.every(({ cells }) => cells.every(({ claims }) => widthOf(claims) + 1.5 <= cellWidth));
  const [coarsest] = layouts.slice(-1);
  return layouts.find((layout) => layout.cellWidth >= LEAST_WIDTH && fits(layout)) ?? (coarsest as TriangleLayout);
};

type MonthRow = TriangleView['rows'][number];

const monthNumber = (month: string): number => Number(month.slice(0, 4)) * 12 + Number(month.slice(5, 7)) - 1;

const periodsOf = (rows: readonly MonthRow[], months: number): ReadonlyMap<number, readonly MonthRow[]> => {
  const periods = new Map<number, MonthRow[]>();
  for (const row of rows) {
    const period = Math.floor(monthNumber(row.built) / months);
    const own = periods.get(period);
    if (own) own.push(row);
    else periods.set(period, [row]);
  }
  return periods;
};

const layoutOf = (
  rows: readonly MonthRow[],
  by: {
    readonly monthsDown: number;
    readonly monthsAcross: number;
    readonly most: number;
    readonly width: number;
  },
): TriangleLayout => {
  const columns = Math.max(1, Math.ceil(by.most / by.monthsAcross));
  const laid = [...periodsOf(rows, by.monthsDown)].map(([period, own]) => rowOf(period, own, { ...by, columns }));
  const rates = laid.flatMap(({ cells }) => cells.map(({ claims, atRisk }) => (atRisk === 0 ? 0 : claims / atRisk)));
  return {
    ...{ monthsDown: by.monthsDown, monthsAcross: by.monthsAcross, columns, rows: laid },
    cellWidth: Math.min(GREATEST_WIDTH, by.width / columns),
    most: rates.reduce((a, b) => Math.max(a, b), 0),
  };
};

const rowOf = (
  period: number,
  rows: readonly MonthRow[],
  by: { readonly monthsDown: number; readonly monthsAcross: number; readonly columns: number },
): TriangleRow => {
  const cells = Array.from({ length: by.columns }, () => ({ claims: 0, atRisk: 0 }));
  for (const { cells: own } of rows)
    own.forEach(({ claims, atRisk }, month) => {
      const cell = cells[Math.floor(month / by.monthsAcross)];
      if (cell === undefined) return;
      cell.claims += claims;
      cell.atRisk += atRisk;
    });
  return {
    ...{ label: labelOf(period, by.monthsDown), cells },
    hulls: rows.reduce((sum, { cells: own }) => sum + (own[0]?.atRisk ?? 0), 0),
    claims: cells.reduce((sum, { claims }) => sum + claims, 0),
  };
};

const labelOf = (period: number, months: number): string => {
  const first = period * months;
  const year = Math.floor(first / 12);
  if (months === 1) return `${year}-${String((first % 12) + 1).padStart(2, '0')}`;
  if (months === 3) return `${year} Q${(first % 12) / 3 + 1}`;
  return months === 12 ? `${year}` : `${year} on`;
};
