import { hasRightToLeft, withLevels } from './direction.js';
import { opensLine } from './line-opens.js';
import { asMark, joinMarks } from './marks.js';
import type { Unit } from './unit.js';

/** Whether a font has a glyph for a code point. */
export type HasGlyph = (codePoint: number) => boolean;

const characters = new Intl.Segmenter('en', { granularity: 'grapheme' });
const LINE_END = /^(?:\r\n|[\n\r\v\f\u0085\u2028\u2029])$/u;
const UNBROKEN_SPACE = /^[\u00a0\u2007\u202f]$/u;
const SPACE = /^[\t\p{Zs}]$/u;
/** ASCII without controls. */
const PLAIN = /^[ -~]*$/;
/** Control, format (bidirectional overrides, zero width), private, unassigned and half surrogates print as nothing. */
const INVISIBLE = /\p{C}/u;

/**
 * Turns any text into units that a family of fonts can print; nothing is left out.
 *
 * A character takes the first font that has it. One that no font has, or that would print as nothing, becomes its
 * code point in the form [U+4E2D]. Tabs and wide spaces become a space. Units stay in the order of writing; where some
 * run from right to left each has its level.
 */
export const toUnits = (text: string, fonts: readonly HasGlyph[]): readonly Unit[] => {
  if (PLAIN.test(text)) return Array.from(text).flatMap((character) => unitsOf(character, fonts));
  const ordered = hasRightToLeft(text);
  const units = clustersOf(text).flatMap((cluster) => (ordered && asMark(cluster)) || unitsOf(cluster, fonts));
  return (ordered ? withLevels(joinMarks(units)) : units).map((unit, i, all) =>
    opensLine(all[i - 1], unit) ? { ...unit, opens: true } : unit,
  );
};

/** Finding clusters in plain text would be most of the work of setting it. A joiner counts as a cluster of its own. */
const clustersOf = (text: string): readonly string[] =>
  Array.from(characters.segment(text), ({ segment }) => segment).flatMap((segment) =>
    segment.length > 1 ? segment.split(/(?=\u200c)/u) : [segment],
  );

const unitsOf = (cluster: string, fonts: readonly HasGlyph[]): readonly Unit[] => {
  if (LINE_END.test(cluster)) return [{ kind: 'line end', text: '', font: 0 }];
  if (UNBROKEN_SPACE.test(cluster)) return [{ kind: 'text', text: '\u00a0', font: 0 }];
  if (SPACE.test(cluster)) return [{ kind: 'space', text: ' ', font: 0 }];
  const composed = cluster.normalize('NFC');
  const whole = fontFor(composed, fonts);
  if (whole >= 0) return [{ kind: 'text', text: composed, font: whole }];
  return Array.from(cluster, (character): Unit => {
    const font = fontFor(character, fonts);
    if (font >= 0) return { kind: 'text', text: character, font };
    return { kind: 'code point', text: codePointName(character), font: 0 };
  });
};

const fontFor = (text: string, fonts: readonly HasGlyph[]): number =>
  INVISIBLE.test(text)
    ? -1
    : fonts.findIndex((has) => Array.from(text).every((character) => has(character.codePointAt(0) ?? 0)));

const codePointName = (character: string): string =>
  `[U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}]`;
