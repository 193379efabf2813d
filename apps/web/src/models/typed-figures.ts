/** A figure as it was typed, by point or comma; undefined when nothing was typed, NaN when it is none. */
export const figureTyped = (typed: string): number | undefined => {
  const text = typed.trim().replace('\u2212', '-').replace(',', '.');
  if (text === '') return undefined;
  return /^-?\d{1,9}(\.\d{1,9})?$/.test(text) ? Number(text) : Number.NaN;
};

/** How a figure is typed; nothing for one that is not there. */
export const typedFigure = (figure: number | string | undefined): string =>
  figure === undefined ? '' : String(figure);

// Fifteen digits: a tenth of a per cent comes back as the decimal that it was.
const rounded = (figure: number): number => Number(figure.toPrecision(15));

/** A fraction from what was typed as a percentage. */
export const fractionTyped = (typed: string): number | undefined => {
  const percent = figureTyped(typed);
  return percent === undefined ? undefined : rounded(percent / 100);
};

/** A fraction as a percentage that is typed. */
export const typedPercent = (fraction: number | undefined): string =>
  fraction === undefined ? '' : String(rounded(fraction * 100));
