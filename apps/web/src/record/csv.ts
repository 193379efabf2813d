/** What a spreadsheet takes for a formula when it stands first (OWASP, CSV injection; read there). */
const FORMULA = /^[=+\-@\t\r]/;

const cellOf = (value: string | number | null): string => {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const safe = FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

/**
 * Rows as comma-separated values (RFC 4180).
 *
 * A text that a spreadsheet would run as a formula gets an apostrophe before it; numbers stay numbers, with a point.
 */
export const toCsv = (rows: readonly (readonly (string | number | null)[])[]): string =>
  rows.map((row) => `${row.map(cellOf).join(',')}\r\n`).join('');
