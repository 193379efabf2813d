/** Words for instants in the time zone of a plant, such as "5 Jan 2026 07:12 UTC−5". */
export interface PlantTime {
  readonly at: (instant: Date) => string;
  /** Both ends; day and offset once when they are the same. */
  readonly span: (from: Date, to: Date) => string;
}

interface Moment {
  readonly day: string;
  readonly clock: string;
  readonly offset: string;
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** "GMT-5" of the locale data as "UTC−5"; no offset at all as "UTC", which some versions of the data write as +0. */
const wordOffset = (name: string): string =>
  name
    .replace('GMT', 'UTC')
    .replace('-', '\u2212')
    .replace(/[+\u2212]0$/, '');

/**
 * Words instants in a time zone, the same whatever time zone and language the process runs in.
 *
 * Only numbers are taken from the locale data; months and the order of the words are fixed.
 *
 * @param timeZone IANA name of the plant's time zone; a RangeError when there is none of that name
 */
export const plantTime = (timeZone: string): PlantTime => {
  const format = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    calendar: 'gregory',
    numberingSystem: 'latn',
    hourCycle: 'h23',
    ...{ year: 'numeric', month: 'numeric', day: 'numeric', hour: '2-digit', minute: '2-digit' },
    timeZoneName: 'shortOffset',
  });
  const read = (instant: Date): Moment => {
    const part = new Map(format.formatToParts(instant).map(({ type, value }) => [type, value]));
    const month = MONTHS[Number(part.get('month')) - 1] ?? '';
    return {
      day: `${Number(part.get('day'))} ${month} ${part.get('year') ?? ''}`,
      clock: `${part.get('hour') ?? ''}:${part.get('minute') ?? ''}`,
      offset: wordOffset(part.get('timeZoneName') ?? ''),
    };
  };
  const word = ({ day, clock, offset }: Moment): string => `${day} ${clock} ${offset}`;
  return {
    at: (instant) => word(read(instant)),
    span: (from, to) => {
      const [a, b] = [read(from), read(to)];
      if (word(a) === word(b)) return word(a);
      return a.day === b.day && a.offset === b.offset
        ? `${a.day} ${a.clock} to ${b.clock} ${a.offset}`
        : `${word(a)} to ${word(b)}`;
    },
  };
};
