import { catalystPercentByMass, catalystPercentByVolume, judgeCatalyst, toSi } from '@hull-record/trade';
import type { Found } from '../verdicts/keep-verdict.js';
import type { MaterialIn } from './materials-in.js';

export const CATALYST = 'catalyst';

/** Roles that are catalysed. */
const CATALYSED: ReadonlySet<string> = new Set(['gel coat', 'resin', 'putty', 'bonding paste']);

const sum = (materials: readonly MaterialIn[]): number => materials.reduce((total, { kg }) => total + kg, 0);

/** Litres, when the density of each is known. */
const litres = (materials: readonly MaterialIn[]): number | null =>
  materials.every(({ densityKgPerL }) => densityKgPerL !== null)
    ? materials.reduce((total, { kg, densityKgPerL }) => total + kg / (densityKgPerL as number), 0)
    : null;

/**
 * Judges catalyst in a mixture against the window of the material that most of it is. Per cent by mass and per cent by
 * volume are two things: the window is by mass.
 *
 * @param set per cent that a gun was set to; the amounts were split by it to their last digit, so it is what is judged as
 *   long as they are that split
 * @returns nothing when there is no catalyst, or nothing to catalyse
 */
export const judgeCatalystIn = (materials: readonly MaterialIn[], set: number | null = null): readonly Found[] => {
  const catalyst = materials.filter(({ role }) => role === 'catalyst');
  const base = materials.filter(({ role }) => CATALYSED.has(role));
  const [main] = base;
  if (catalyst.length === 0 || !main) return [];
  const weighed = catalystPercentByMass(sum(catalyst), sum(base));
  const percentByMass = set !== null && Math.abs(weighed / set - 1) < LAST_DIGIT ? set : weighed;
  const [catalystL, baseL] = [litres(catalyst), litres(base)];
  const percentByVolume = catalystL === null || baseL === null ? null : catalystPercentByVolume(catalystL, baseL);
  const window = windowOf(main);
  const figures = {
    percentByMass,
    percentByVolume,
    minPercent: window?.minPercent ?? null,
    maxPercent: window?.maxPercent ?? null,
  };
  const of = `${percentByMass.toFixed(2)} % catalyst by mass${percentByVolume === null ? '' : ` (${percentByVolume.toFixed(2)} % by volume)`} in ${main.name}`;
  if (!window) {
    const detail = `${of}: its data name no window.`;
    return [
      { ...ABOUT, source: 'No window in the data of the material.', verdict: 'cannot be judged', detail, figures },
    ];
  }
  const judged = judgeCatalyst(percentByMass, { ...window, source: '' }).verdict;
  const detail = `${of}; its window is ${window.minPercent} to ${window.maxPercent} %.`;
  const found = { ...ABOUT, source: window.source, detail, figures };
  if (judged === 'inside' || judged === 'cannot be judged') return [{ ...found, verdict: judged }];
  return [{ ...found, verdict: 'outside', breaks: 'catalyst-outside-window' }];
};

/** How far the last digit of a small amount may take the split from what was set, as a fraction. */
const LAST_DIGIT = 0.005;

const ABOUT = {
  topic: CATALYST,
  rule: 'Catalyst per cent by mass of what is catalysed, both ends of the window included, unrounded.',
};

/** The window that a material's data names, per cent by mass, with who says so; undefined when none does. */
export const windowOf = ({ makerData, name }: Pick<MaterialIn, 'makerData' | 'name'>) => {
  const { catalystWindow: window, dataSheet } = makerData;
  if (!window) return undefined;
  const percent = (value: number | undefined, open: number): number =>
    value === undefined ? open : window.unit === '%' ? value : toSi(value, window.unit) * 100;
  return {
    minPercent: percent(window.min, 0),
    maxPercent: percent(window.max, 100),
    source: dataSheet ?? `Data of ${name} as registered.`,
  };
};
