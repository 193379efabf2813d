import { decodeHin } from './hin.js';
import { stripPunctuation } from './punctuation.js';

/**
 * The form in which hull numbers and HINs are compared: capitals, without spaces, hyphens, dashes and slashes.
 *
 * `US` in front of a valid twelve-character HIN is dropped, and nowhere else, so a HIN is found however it was typed.
 * Two hull numbers that differ only by punctuation collide on purpose: people drop punctuation when they read a
 * number aloud, and two boats that are told apart by a hyphen will be mixed up.
 */
export const normaliseNumber = (text: string): string => {
  const glyphs = stripPunctuation(text);
  const reading = decodeHin(glyphs);
  return reading.valid ? reading.hin : glyphs;
};
