import type { EntityManager } from 'typeorm';
import { filmFromKgUm, judgeFilmFit } from '@hull-record/trade';
import type { Found } from '../verdicts/keep-verdict.js';
import type { LayerMade } from './layer-made.js';
import type { MaterialIn } from './materials-in.js';
import { newestReadings } from './readings-of-layer.js';

export const FILM = 'film against use';

/** Roles that are no part of a wet film. */
const SOLID: ReadonlySet<string> = new Set(['glass', 'core']);

const RULE =
  'Area x film x density against the kilograms used: a film holds no more than was used, and of what was used no more than the loss allowance is missing from it; 10 % either way for the reach of a notch gauge (common practice).';

/** Whether the kilograms used fit the film that was read; nothing while one of them, or the area, is not known. */
export const judgeFilm = async (
  tx: EntityManager,
  layer: string,
  { area_m2: areaM2, loss_allowance: named, schedule, name }: LayerMade,
  materials: readonly MaterialIn[],
): Promise<Found | undefined> => {
  const wet = materials.filter(({ role }) => !SOLID.has(role));
  const [main] = wet;
  const films = await newestReadings(tx, layer, 'wet film');
  if (areaM2 === null || !main || films.length === 0) return undefined;
  const usedKg = wet.reduce((sum, { kg }) => sum + kg, 0);
  const filmUm = (films.reduce((sum, film) => sum + film, 0) / films.length) * 1e6;
  const lossAllowance = named ?? main.lossAllowance;
  const figures = { usedKg, areaM2, filmUm, lossAllowance, densityKgPerL: main.densityKgPerL };
  const found = { topic: FILM, rule: RULE, source: `Area and loss allowance: schedule ${schedule}, layer ${name}.` };
  const missing = [
    ...(main.densityKgPerL === null ? [`the density of ${main.name}`] : []),
    ...(lossAllowance === null ? ['a loss allowance of the layer or material'] : []),
  ];
  if (main.densityKgPerL === null || lossAllowance === null)
    return { ...found, verdict: 'cannot be judged', detail: `Not known: ${missing.join(', ')}.`, figures };
  const densityKgPerL = main.densityKgPerL;
  const fit = judgeFilmFit({ areaM2, filmUm, densityKgPerL, usedKg, lossAllowance });
  const spread = filmFromKgUm(usedKg, areaM2, densityKgPerL);
  const detail = `${usedKg.toFixed(2)} kg on ${areaM2} m2 are ${spread.toFixed(0)} µm without losses; ${filmUm.toFixed(0)} µm were read (mean of ${films.length}), which hold ${fit.expectedKg.toFixed(2)} kg.`;
  const judged = { ...found, figures: { ...figures, expectedKg: fit.expectedKg, lostFraction: fit.lostFraction } };
  if (fit.verdict === 'cannot be judged') return { ...judged, verdict: 'cannot be judged', detail: fit.text };
  return fit.verdict === 'fits'
    ? { ...judged, verdict: 'inside', detail }
    : { ...judged, verdict: 'outside', detail: `${detail} ${fit.verdict}.`, breaks: 'film-does-not-fit' };
};
