import type { InquiryView, Said } from '@hull-record/paper';
import { count } from '../../word-values.js';
import { sentence, wordPaper } from '../../../platform/papers/word-paper.js';
import type { InquiryFacts } from './load-inquiry.js';
import { METHODS } from './methods.js';
import { wordAhead } from './word-ahead.js';
import { wordClass, wordCover, wordOther, wordUntestable } from './word-classes.js';
import { wordHulls } from './word-hulls.js';
import { wordPlaces, wordTriangle } from './word-places.js';
import { wordSettings } from './word-settings.js';

const COUNSEL = 'Prepared at the direction of counsel.';

/** Words a look at a case as its report prints it: nothing that the answer does not say. */
export const wordInquiry = (facts: InquiryFacts): InquiryView => {
  const { paper, time } = wordPaper(facts.plant, facts.newest, null);
  const { answer, settings } = facts;
  return {
    ...paper,
    ...{ case: facts.code, title: facts.title, counsel: facts.under_counsel ? COUNSEL : null },
    look: `look ${facts.look} of ${facts.looks} that were taken, ${time.at(facts.looked_at)}. Who looks often finds something by chance`,
    ...{ verdict: `Word: ${sentence(answer.verdict)}.`, sentences: answer.sentences },
    exploratory: { is: answer.exploratory, says: answer.exploratory ? EXPLORATORY : CONFIRMING },
    triangle: answer.forecast === null ? null : wordTriangle(answer.forecast, settings.origin),
    ...{ hulls: wordHulls(answer), settings: wordSettings(facts, time) },
    tests:
      `${count(answer.tests, 'class', 'classes')} of lots tested; the first ${answer.classes.length} stand here, the most likely first. ` +
      'Ratio: claims observed over claims expected at the rate of the strata. A filled square: strong; an open one: suggestive; a short line: does not stand out.',
    classes: answer.classes.map(wordClass),
    ...{ untestable: wordUntestable(answer.untestable), cover: wordCover(answer.cover) },
    apart: answer.apart.map(wordOther),
    places: answer.places === null ? null : wordPlaces(answer.places),
    ahead: answer.forecast === null ? null : wordAhead(answer.forecast, facts.costs),
    ...{ next: answer.next, cannotSay: answer.cannotSay, methods: METHODS, again: againOf(facts) },
  };
};

const EXPLORATORY =
  'Exploratory: the settings were frozen after claims that they are tested by. It raises a question, and does not answer one.';
const CONFIRMING = 'The settings were frozen before every claim that they are tested by.';

/** Hashes under which everything is kept, and what to do with them. */
const againOf = (facts: InquiryFacts): readonly Said[] => [
  ['Settings SHA-256', facts.settings_sha256],
  ['Inputs SHA-256', facts.inputs_sha256],
  ['Answer SHA-256', facts.answer_sha256],
  ['Method version', facts.settings.method],
  ['Seed', String(facts.settings.attribution.seed)],
  [
    'How',
    'The builder keeps the inputs (hulls, claims, lots and their shares, as they were when this look was taken) under their ' +
      'hash. Hashes are of canonical JSON (RFC 8785). The same settings, inputs and method version give the same answer to the ' +
      'digit: the builder’s service works it out again on asking, and anybody who is given settings and inputs can work it out ' +
      'by the methods above and compare.',
  ],
];
