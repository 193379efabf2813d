/**
 * The instant that a clock of the plant showed.
 *
 * @param shown `yyyy-mm-ddThh:mm`, as a browser gives a time of day without a zone
 * @param timeZone IANA name of the plant's time zone
 * @returns ISO 8601 in UTC; of an hour that a change of the clocks repeats, one of the two
 */
export const plantInstant = (shown: string, timeZone: string): string => {
  const asUtc = Date.parse(`${shown}:00Z`);
  // The offset is that of the instant that is looked for; a first guess finds it but for the hours around a change.
  const guess = asUtc - offsetAt(asUtc, timeZone);
  return new Date(asUtc - offsetAt(guess, timeZone)).toISOString();
};

/** How far the clock of a zone is ahead of UTC at an instant, ms. */
const offsetAt = (at: number, timeZone: string): number => {
  const format = new Intl.DateTimeFormat('en-CA', {
    ...{ year: 'numeric', month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit' },
    ...{ hourCycle: 'h23', timeZone },
  });
  const part = Object.fromEntries(format.formatToParts(new Date(at)).map(({ type, value }) => [type, value]));
  const shown = `${part['year']}-${part['month']}-${part['day']}T${part['hour']}:${part['minute']}:00Z`;
  return Date.parse(shown) - Math.floor(at / 60_000) * 60_000;
};
