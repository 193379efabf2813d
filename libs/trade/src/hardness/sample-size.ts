/** Rows of the sample-size table of ASTM D2583: hardness and the least number of readings. */
const ROWS = {
  reinforced: [
    [30, 29],
    [40, 22],
    [50, 16],
    [60, 10],
    [70, 5],
  ],
  homogeneous: [
    [20, 9],
    [30, 8],
    [40, 7],
    [50, 6],
    [60, 5],
    [70, 4],
    [80, 3],
  ],
} as const;

/** Where the table comes from: nothing is ever stopped by it. */
export const SAMPLE_SIZE_SOURCE = 'ASTM D2583 sample-size table (from memory, confirm against the standard)';

/**
 * How many Barcol readings equalise the variance of the average at a hardness (ASTM D2583, model 934-1; from memory).
 *
 * Between two rows it is that of the lower hardness, which asks more; outside the table it is null.
 */
export const readingsWanted = (hardness: number, material: keyof typeof ROWS): number | null => {
  const rows: readonly (readonly [number, number])[] = ROWS[material];
  const last = rows.at(-1);
  if (last === undefined || !(hardness <= last[0])) return null;
  return rows.findLast(([row]) => row <= hardness)?.[1] ?? null;
};
