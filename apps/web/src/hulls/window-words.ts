import type { LayerRecordView } from '@hull-record/contracts';
import { windowCountdown } from '@hull-record/trade';
import type { Speaker } from '../language/speak.js';

const span = (minutes: number): string => {
  const [days, hours] = [Math.floor(minutes / 1440), Math.floor((minutes % 1440) / 60)];
  if (days > 0) return `${days} d ${hours} h`;
  return hours > 0 ? `${hours} h ${minutes % 60} min` : `${minutes} min`;
};

/** What is left of the time in which the next layer bonds, at an instant (ms since 1970). */
export const windowWords = (
  { from, until }: NonNullable<LayerRecordView['nextLayer']>,
  now: number,
  { t }: Pick<Speaker, 't'>,
): string => {
  const latest = until === null ? Infinity : Date.parse(until);
  const { state, minutes } = windowCountdown(now, { earliest: Date.parse(from), latest });
  if (state === 'wait') return t('hulls.nextWait', { time: span(minutes ?? 0) });
  if (state === 'passed') return t('hulls.nextPassed');
  return until === null ? t('hulls.nextFromNow') : t('hulls.nextLeft', { time: span(minutes ?? 0) });
};
