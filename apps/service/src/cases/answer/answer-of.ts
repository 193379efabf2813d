import type { CaseAnswer } from '@hull-record/contracts';
import { sharesOf } from '@hull-record/statistics';
import type { CaseInputs } from '../inputs/case-inputs.js';
import type { CaseSettings } from '../settings.js';
import { compareLots, named } from './compare-lots.js';
import { forecastOfCase } from './forecast-of-case.js';
import { otherExposures } from './other-exposures.js';
import { placesOfCase } from './places-of-case.js';
import { cannotSay, nextSteps, sentencesOf } from './words.js';

/** So many hulls are named as worth a look: a day's work of an inspector. */
const HULLS_TO_INSPECT = 20;

/**
 * The answer of a look: of frozen settings and kept inputs alone, so that it comes out again to the digit.
 *
 * @param tell is told each step before it is done
 */
export const answerOf = async (
  settings: CaseSettings,
  inputs: CaseInputs,
  tell: (step: number) => Promise<void> = () => Promise.resolve(),
): Promise<CaseAnswer> => {
  await tell(2);
  const { attribution, leader: shown, part } = compareLots(inputs, settings);
  await tell(3);
  const apart = otherExposures(inputs, settings);
  await tell(4);
  const places = placesOfCase(inputs, settings);
  await tell(5);
  const { leader } = attribution;
  const leading = leader ? { named: named(leader.suspect), hulls: leader.suspect.hulls } : null;
  const forecast = forecastOfCase(inputs, settings, leading);
  const hulls = countsOf(inputs);
  const { exploratory } = inputs;
  const shares = leader && sharesOf(leader.suspect);
  const claimless = [...(leader?.suspect.hulls ?? [])].flatMap((place, i) => {
    const hull = inputs.hulls[place];
    return hull?.running ? [{ hull: hull.number, share: shares?.[i] ?? 1 }] : [];
  });
  const toInspect = claimless.sort((a, b) => b.share - a.share).slice(0, HULLS_TO_INSPECT);
  return {
    ...{ method: settings.method, hulls, watchedUntil: inputs.watchedUntil, exploratory, ...part },
    sentences: sentencesOf({ ...part, leader: shown }, hulls, exploratory),
    cannotSay: cannotSay({ ...part, leader: shown }, hulls, exploratory),
    ...{
      next: nextSteps(
        shown,
        toInspect.map(({ hull }) => hull),
      ),
      toInspect,
    },
    ...{ apart, places, forecast },
  };
};

const countsOf = ({ hulls, leftOut }: CaseInputs): CaseAnswer['hulls'] => {
  const { withoutOrigin, notLaunched, before, beforeOrigin } = leftOut;
  const all = hulls.length + withoutOrigin + notLaunched + before + beforeOrigin;
  return {
    atRisk: hulls.length,
    withClaim: hulls.filter(({ claimed }) => claimed).length,
    ...leftOut,
    shareWithoutOrigin: all === 0 ? 0 : leftOut.withoutOrigin / all,
    strata: new Set(hulls.map(({ stratum }) => stratum)).size,
  };
};
