/** What was typed as a number, by point or comma; undefined when nothing was typed, NaN when it is no plain decimal. */
export const typedNumber = (typed: string): number | undefined => {
  const text = typed.trim().replace(',', '.');
  if (text === '') return undefined;
  return /^\d{1,9}(\.\d{1,9})?$/.test(text) ? Number(text) : Number.NaN;
};

/** The same as the record takes a decimal: a plain one, or undefined. */
export const typedDecimal = (typed: string): string | undefined => {
  const number = typedNumber(typed);
  return number === undefined || Number.isNaN(number) ? undefined : typed.trim().replace(',', '.');
};
