import type { AmountView } from '@hull-record/contracts';
import { h, type Child } from './dom.js';

const UNIT_SIGNS: Readonly<Record<string, string>> = {
  ...{ um: 'µm', C: '°C', F: '°F', m2: 'm²', ft2: 'ft²', yd2: 'yd²', m3: 'm³', usgal: 'US gal', pc: 'pc' },
  ...{ 'g/m2': 'g/m²', 'kg/m2': 'kg/m²', 'oz/ft2': 'oz/ft²', 'oz/yd2': 'oz/yd²', '1': '' },
};

/** The sign of a unit as people write it. */
export const unitSign = (unit: string): string => UNIT_SIGNS[unit] ?? unit;

/** A number in words of at most so many significant digits, never rounded to fewer digits than stand before the point. */
export const figure = (value: number, digits = 3): string => {
  const before = Math.floor(Math.log10(Math.max(1, Math.abs(value)))) + 1;
  return value.toLocaleString('en', { maximumSignificantDigits: Math.max(digits, before) }).replaceAll(',', '\u202f');
};

/** Kilograms, to four digits; what is left of a lot after many fills of a tank, to two. */
export const kilograms = (kg: number): string => `${figure(kg, Math.abs(kg) < 0.1 ? 2 : 4)} kg`;

/** A share as a percentage. What is not the whole never reads as 100 %. */
export const percent = (share: number): string => {
  const shown = figure(share * 100, share < 1e-4 ? 2 : 3);
  return shown === '100' && share < 1 - 1e-9 ? 'just under 100 %' : `${shown} %`;
};

/** An amount as entered, in kilograms too when it was entered in another unit. */
export const amountWords = ({ quantity, unit, kg }: AmountView): string =>
  unit === 'kg' ? `${plain(quantity)} kg` : `${plain(quantity)} ${unitSign(unit)}, that is ${kilograms(kg)}`;

/** A decimal as the database keeps it, without the zeros that say nothing. */
export const plain = (decimal: string): string => (decimal.includes('.') ? decimal.replace(/\.?0+$/, '') : decimal);

const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
const TIME = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
const ZONE = new Intl.DateTimeFormat('en-GB', { timeZoneName: 'longOffset' });
const CALENDAR = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });

/** A calendar day, the same wherever it is read. */
export const calendarDay = (day: string): Child =>
  h('time', { datetime: day, class: 'nb' }, CALENDAR.format(new Date(day)));

/** The day of an instant, on this device's clock. */
export const day = (at: string): Child => h('time', { datetime: at, class: 'nb' }, DAY.format(new Date(at)));

/** An instant to the minute, on this device's clock. */
export const moment = (at: string): Child => {
  const date = new Date(at);
  return h('time', { datetime: at, class: 'nb' }, `${DAY.format(date)}, ${TIME.format(date)}`);
};

/** From one instant to another; the day is not said twice. */
export const span = (from: string, to: string): Child => {
  const [a, b] = [new Date(from), new Date(to)];
  if (from === to) return moment(from);
  const sameDay = DAY.format(a) === DAY.format(b);
  return [moment(from), ' to ', sameDay ? h('time', { datetime: to }, TIME.format(b)) : moment(to)];
};

/** From one day to another; one day is said once. */
export const days = (from: string, to: string): Child =>
  DAY.format(new Date(from)) === DAY.format(new Date(to)) ? day(from) : [day(from), ' to ', day(to)];

/** The zone that times are shown in. */
export const zoneWords = (): string => {
  const offset = ZONE.formatToParts(new Date()).find(({ type }) => type === 'timeZoneName')?.value ?? '';
  return `Times are by the clock of this device (${offset.replace('-', '\u2212')}).`;
};

/** "1 layer", "2 layers". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
