/**
 * The values of a certificate, typed a line each as `name: value`; a number is kept as one.
 *
 * A line without a colon is kept as a value without a name would be: under its own words, as typed.
 */
export const certificateOf = (typed: string): Readonly<Record<string, string | number>> =>
  Object.fromEntries(
    typed
      .split('\n')
      .map((line) => line.trim())
      .filter((line) => line !== '')
      .map((line) => {
        const colon = line.indexOf(':');
        if (colon < 1) return [line.slice(0, 80), line];
        const value = line.slice(colon + 1).trim();
        return [line.slice(0, colon).trim().slice(0, 80), /^-?\d+(\.\d+)?$/.test(value) ? Number(value) : value];
      }),
  ) as Readonly<Record<string, string | number>>;
