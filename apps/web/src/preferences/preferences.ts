import { firstSpoken, isLanguage, type Language } from '../language/language.js';

/** What may be chosen, by name. `recorded` leaves a figure in the unit it was entered in. */
export const CHOICES = {
  theme: ['system', 'light', 'dark', 'glare'],
  film: ['recorded', 'mil', 'um'],
  temperature: ['recorded', 'C', 'F'],
  mass: ['kg', 'lb'],
} as const;

/** What the person at this device chose. */
export interface Preferences {
  readonly language: Language;
  readonly theme: (typeof CHOICES.theme)[number];
  readonly film: (typeof CHOICES.film)[number];
  readonly temperature: (typeof CHOICES.temperature)[number];
  readonly mass: (typeof CHOICES.mass)[number];
}

/** The units among the choices. */
export type Units = Pick<Preferences, 'film' | 'temperature' | 'mass'>;

/**
 * The preferences in a text kept earlier; what it does not say, or says in a way that is not known, is as at first.
 *
 * @param kept JSON as `JSON.stringify` of preferences, or null when nothing was kept
 * @param wished languages of the browser, the dearest first
 */
export const readPreferences = (kept: string | null, wished: readonly string[]): Preferences => {
  const said = parsed(kept);
  const one = <T extends string>(name: string, among: readonly T[], first: T): T =>
    among.find((each) => each === said[name]) ?? first;
  const language = String(said['language']);
  return {
    language: isLanguage(language) ? language : firstSpoken(wished),
    theme: one('theme', CHOICES.theme, 'system'),
    film: one('film', CHOICES.film, 'recorded'),
    temperature: one('temperature', CHOICES.temperature, 'recorded'),
    mass: one('mass', CHOICES.mass, 'kg'),
  };
};

const parsed = (kept: string | null): Readonly<Record<string, unknown>> => {
  try {
    const value: unknown = JSON.parse(kept ?? '{}');
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
};
