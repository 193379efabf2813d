import { facts, type Fact } from '../facts.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import type { PaperPart, PaperView } from './paper-view.js';

/** The facts under the title, and the moment whose state is printed. */
export const titleFacts = (fonts: Fonts, view: PaperView, own: readonly Fact[]): Block =>
  facts(fonts, [...own, ['State as of', view.stateAsOf.text], ['As an instant', view.stateAsOf.instant, 'code']], 8);

/** What a paper of the shop says of the part it is about. */
export const partFacts = (part: PaperPart): readonly Fact[] => [
  ['Part', part.number, 'code-bold'],
  ['Kind', part.kind],
  ['Hull', part.hull ?? 'joined to no hull yet', part.hull === null ? 'body' : 'code-bold'],
  ['HIN', part.hin, 'code-bold'],
  ['Model', part.model],
  ['Mold', part.mold],
  ['Laminate schedule', part.schedule],
  ['SCRAPPED', part.scrapped, 'bold'],
];
