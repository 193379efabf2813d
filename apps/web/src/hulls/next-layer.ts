import type { LayerRecordView } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { windowCountdown } from '../trade.js';

type Window = NonNullable<LayerRecordView['nextLayer']>;

/** How often the words are written anew. */
const EVERY_MS = 30_000;

const span = (minutes: number): string => {
  const [days, hours] = [Math.floor(minutes / 1440), Math.floor((minutes % 1440) / 60)];
  if (days > 0) return `${days} d ${hours} h`;
  return hours > 0 ? `${hours} h ${minutes % 60} min` : `${minutes} min`;
};

/** What is left of the time in which the next layer bonds, at an instant (ms). */
export const windowWords = ({ from, until }: Window, now: number): string => {
  const latest = until === null ? Infinity : Date.parse(until);
  const { state, minutes } = windowCountdown(now, { earliest: Date.parse(from), latest });
  if (state === 'wait') return `Next layer: wait ${span(minutes ?? 0)}.`;
  if (state === 'passed')
    return 'Next layer: the window has passed. It is a secondary bond: prepare the surface, and say how.';
  return until === null ? 'Next layer: from now on.' : `Next layer: ${span(minutes ?? 0)} left.`;
};

/** The time in which the next layer bonds, counted down while the page is open, with who says so. */
export const nextLayer = (window: Window): Child => {
  const words = h('p', { class: 'b' }, windowWords(window, Date.now()));
  const timer = setInterval(() => {
    if (words.isConnected) words.textContent = windowWords(window, Date.now());
    else clearInterval(timer);
  }, EVERY_MS);
  return [words, h('p', { class: 'note soft' }, window.source)];
};
