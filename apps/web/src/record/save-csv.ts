import { toCsv } from './csv.js';

/** Lets the browser keep rows as a file; a mark of the encoding makes spreadsheets read it as UTF-8. */
export const saveCsv = (name: string, rows: readonly (readonly (string | number | null)[])[]): void => {
  const address = URL.createObjectURL(new Blob(['\uFEFF', toCsv(rows)], { type: 'text/csv;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${name.replace(/[^\w.-]+/g, '-')}.csv`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
};
