import { StreamableFile } from '@nestjs/common';

/** What a spreadsheet takes for the beginning of a formula, also after spaces or with a full-width form. */
const FORMULA = /^[\s\u00a0]*[=+\-@\uff0b\uff0d\uff1d\uff20\t\r]/u;

/**
 * A cell of a CSV file (RFC 4180), quoted always. A text that a spreadsheet would take for a formula has an apostrophe
 * before it, so that opening the file runs nothing.
 */
export const csvCell = (value: string | number | null): string => {
  const text = value === null ? '' : String(value);
  const safe = typeof value === 'string' && FORMULA.test(text) ? `'${text}` : text;
  return `"${safe.replaceAll('"', '""')}"`;
};

/** A CSV file as an answer: a head, then rows; lines end as RFC 4180 has it, and a mark says that it is UTF-8. */
export const csvAnswer = (
  name: string,
  about: string,
  head: readonly string[],
  rows: readonly (readonly (string | number | null)[])[],
): StreamableFile => {
  const lines = [head, ...rows].map((row) => row.map(csvCell).join(','));
  return new StreamableFile(Buffer.from(`\ufeff${lines.join('\r\n')}\r\n`, 'utf8'), {
    type: 'text/csv; charset=utf-8; header=present',
    disposition: `attachment; filename="${name}-${about.replace(/[^A-Za-z0-9._-]+/g, '_')}.csv"`,
  });
};
