import type { Limits, ReadingView, ScheduleLayer } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { counted, figure, plain, unitSign } from '../platform/words.js';
import { mark, type Shape } from '../marks/mark.js';
import { fromSi, isUnit, toSi } from '../trade.js';

type Required = ScheduleLayer['readings'][number];

/** Readings by kind with the limits each was judged by; each spot has its own verdict. Kinds not read yet are named. */
export const readingsOf = (readings: readonly ReadingView[], required: readonly Required[] = []): Child => {
  const alike = ({ what, unit, rule }: ReadingView): string => `${what}/${unit}/${rule.text}`;
  const groups = [...new Set(readings.map(alike))].map((key) => readings.filter((reading) => alike(reading) === key));
  const missing = required.filter(({ what }) => !readings.some((reading) => reading.what === what));
  if (groups.length + missing.length === 0) return 'none required';
  return [groups.map(group), missing.map(notRead)];
};

const notRead = ({ what, spots, limits }: Required): Child =>
  h('p', {}, mark('to come', `${what}: not read yet, ${counted(spots, 'spot')} asked for, ${limitWords(limits)}`));

const group = (readings: readonly ReadingView[]): Child => {
  const [first] = readings;
  if (first === undefined) return null;
  const limits = first.rule.limits as Limits | null;
  const gauges = [...new Set(readings.flatMap(({ equipment }) => equipment ?? []))];
  const by = [...new Set(readings.map((reading) => reading.by))];
  return [
    h('p', {}, h('b', {}, first.what), `, ${limits === null ? 'no limit' : limitWords(limits)}`),
    spots(readings),
    h(
      'p',
      { class: 'note soft' },
      gauges.length === 0 ? null : `Gauge ${gauges.join(', ')}. `,
      `Read by ${by.join(', ')}. ${first.rule.text}`,
    ),
  ];
};

/** So many spots are listed as they are; of more, those inside their limits are counted and unfold. */
const LISTED = 4;

const spots = (readings: readonly ReadingView[]): Child => {
  const list = (some: readonly ReadingView[]): HTMLElement => h('ol', { class: 'spots' }, some.map(spot));
  const inside = readings.filter(({ verdict: word, crossesLimit }) => word === 'inside' && !crossesLimit);
  if (readings.length <= LISTED || inside.length === 0) return list(readings);
  const others = readings.filter((reading) => !inside.includes(reading));
  const words =
    others.length === 0
      ? `each of ${readings.length} spots inside`
      : `${inside.length} of ${readings.length} spots inside`;
  return [
    others.length === 0 ? null : list(others),
    h('details', {}, h('summary', {}, mark('inside', words)), list(inside)),
  ];
};

const spot = (reading: ReadingView): Child =>
  h('li', { value: reading.spot }, h('span', { class: 'n' }, valueWords(reading)), ' ', verdict(reading));

const SHAPES: Readonly<Record<string, Shape>> = {
  inside: 'inside',
  outside: 'outside',
  'cannot be judged': 'near',
  'no limit': 'none',
};

const verdict = ({ verdict: word, crossesLimit, concession }: ReadingView): Child => {
  if (concession !== null) return mark('near', `${word}, concession ${concession}`);
  return mark(SHAPES[word] ?? 'none', crossesLimit ? `${word}; the gauge step crosses the limit` : word);
};

/** A reading as entered; a film in mil in micrometres too, as gauges carry both. */
const valueWords = ({ value, below, unit, si }: ReadingView): string => {
  const range = (low: string, high: string | null): string => (high === null ? low : `${low}–${high}`);
  const entered = `${range(plain(value), below === null ? null : plain(below))} ${unitSign(unit)}`;
  if (unit !== 'mil' || !isUnit(unit)) return entered;
  const high = below === null ? null : figure(fromSi(toSi(Number(below), unit), 'um'));
  return `${entered} (${range(figure(fromSi(si, 'um')), high)} µm)`;
};

/** Limits in words, with their unit. */
export const limitWords = ({ min, max, unit }: Limits): string => {
  const sign = unitSign(unit);
  if (min !== undefined && max !== undefined) return `limit ${min} to ${max} ${sign}`;
  return min === undefined ? `limit at most ${max} ${sign}` : `limit at least ${min} ${sign}`;
};
