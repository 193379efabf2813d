import type { Said } from '@hull-record/paper';
import { WHO_MAY } from '@hull-record/contracts/who-may';
import { defectKind } from '../../word-values.js';
import type { PlantTime } from '../../../platform/papers/plant-time.js';
import type { InquiryFacts } from './load-inquiry.js';
import { share } from './word-figures.js';

/** How the case is judged: everything that was frozen, when, and by what role. */
export const wordSettings = (facts: InquiryFacts, time: PlantTime): readonly Said[] => {
  const { settings } = facts;
  const { attribution } = settings;
  return [
    ['Frozen', `${time.at(facts.frozen_at)}, by ${roleOf(facts.frozen_by)}: ${facts.reason}`],
    ['Version', `${facts.version} of ${facts.versions} that were frozen for this case`],
    ['Kind of claim', defectKind(settings.kind).label],
    ['Models', settings.models.length === 0 ? 'all' : settings.models.join(', ')],
    ['Begun', begunOf(settings)],
    ['Time origin', `the day on which a hull: ${settings.origin}; the same for all, with a claim or without`],
    ['Cut-off', `${settings.cutOff}: ${settings.cutOffBecause}`],
    ['Report lag', `${settings.reportLagDays} days before it, for what came to light may not be reported yet`],
    ['Strata', settings.strata.length === 0 ? 'none: all hulls together' : settings.strata.join(' and ')],
    ['Exposed', `from a share of ${share(settings.exposureShare)} of like material in a layer on`],
    ['Tested by', settings.claims === 'all' ? 'all claims' : `claims ${settings.claims}`],
    ['Thresholds', linesOf(settings)],
    [
      'By chance',
      `${attribution.worlds} worlds for the first ${attribution.leaders} classes; seed ${attribution.seed}, so that chance comes out again`,
    ],
    [
      'Weighed over',
      `chance that a bad lot shows ${attribution.thetas.map(share).join(', ')}; part of the pooled hazard that is background ` +
        `${attribution.backgrounds.map(share).join(', ')}; bad lots expected among all ${attribution.priorTimes.join(', ')}; at most ${attribution.mostBad} bad`,
    ],
  ];
};

/** Of the roles of whoever froze it, those by which it may be frozen. */
const roleOf = (roles: readonly string[]): string => {
  const may: readonly string[] = Array.isArray(WHO_MAY.freezeCase) ? WHO_MAY.freezeCase : [];
  const by = roles.filter((role) => may.includes(role));
  return by.length === 0 ? 'the plant' : by.join(' and ');
};

const begunOf = ({ builtFrom, builtTo }: InquiryFacts['settings']): string => {
  if (builtFrom === null && builtTo === null) return 'at any time';
  return `${builtFrom === null ? 'at any time' : `from ${builtFrom}`}${builtTo === null ? ' on' : ` until ${builtTo}`}`;
};

const linesOf = ({ attribution }: InquiryFacts['settings']): string => {
  const upTo = attribution.wordsUpTo === undefined ? '' : ` with a background up to ${share(attribution.wordsUpTo)}`;
  const { strongQ, strongOdds, strongPosterior, suggestiveQ } = attribution.lines;
  return (
    `strong: q below ${strongQ}, lower limit of the hazard odds above ${strongOdds}, posterior above ${strongPosterior} under ` +
    `every assumption${upTo}; suggestive: q below ${suggestiveQ}. Cannot be judged: smallest p above ${attribution.untestableAbove}. ` +
    `Hardly told apart: ${share(attribution.nearlySame)} of hulls the same. Choices of the builder of this program`
  );
};
