import type { Language } from '../language/language.js';

const LOCALES: Readonly<Record<Language, string>> = { en: 'en-GB', es: 'es-ES' };
const DAY = { day: 'numeric', month: 'short', year: 'numeric' } as const;

/** Writes instants (ISO 8601 with an offset) by the clock of the plant, and calendar days. */
export interface Times {
  readonly day: (at: string) => string;
  readonly minute: (at: string) => string;
  /** A calendar day (yyyy-mm-dd), the same wherever it is read. */
  readonly calendarDay: (day: string) => string;
  /** The zone by name and by its offset at an instant, such as "America/New_York, GMT-05:00". */
  readonly zone: (at: Date) => string;
}

/**
 * The times of a plant in a language.
 *
 * @param timeZone IANA name of the plant's time zone; an unknown one is taken for UTC
 */
export const timesOf = (language: Language, timeZone: string): Times => {
  const locale = LOCALES[language];
  const zone = isZone(timeZone) ? timeZone : 'UTC';
  const day = new Intl.DateTimeFormat(locale, { ...DAY, timeZone: zone });
  const minute = new Intl.DateTimeFormat(locale, {
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
    timeZone: zone,
  });
  const calendar = new Intl.DateTimeFormat(locale, { ...DAY, timeZone: 'UTC' });
  const offset = new Intl.DateTimeFormat(locale, { timeZoneName: 'longOffset', timeZone: zone });
  return {
    day: (at) => day.format(new Date(at)),
    minute: (at) => minute.format(new Date(at)),
    calendarDay: (each) => calendar.format(new Date(each)),
    zone: (at) => {
      const words = offset.formatToParts(at).find(({ type }) => type === 'timeZoneName')?.value ?? '';
      return zone === 'UTC' ? zone : `${zone}, ${words.replace('-', '\u2212')}`;
    },
  };
};

const isZone = (name: string): boolean => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false;
  }
};
