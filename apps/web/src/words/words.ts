import type { Catalogue } from '../language/catalogue.js';
import { speakerOf, type Speaker } from '../language/speak.js';
import type { Preferences } from '../preferences/preferences.js';
import { figuresOf, type Figures } from './figures.js';
import { quantitiesOf, type Quantities } from './quantities.js';
import { timesOf, type Times } from './times.js';

/** Everything that words are put with: the texts of a language, its figures, the chosen units, the plant's clock. */
export interface Words extends Speaker, Figures, Quantities {
  readonly times: Times;
  /** The same with more texts of this language, which came with a page. */
  readonly and: (more: Partial<Catalogue>) => Words;
}

/** The words of a person's choices, in the time zone of the plant. */
export const wordsOf = (preferences: Preferences, catalogue: Catalogue, timeZone: string): Words => {
  const speaker = speakerOf(preferences.language, catalogue);
  const figures = figuresOf(preferences.language);
  return {
    ...speaker,
    ...figures,
    ...quantitiesOf({ ...figures, t: speaker.t, units: preferences }),
    times: timesOf(preferences.language, timeZone),
    and: (more) => wordsOf(preferences, { ...catalogue, ...more }, timeZone),
  };
};
