import type { Words } from '../words/words.js';
import type { Area } from './area.js';

/** An area in words: side, and how far along and out, mm. */
export const areaWords = ({ surface, along, across }: Area, { t, term, figure }: Words): string => {
  const mm = (value: number): string => figure(value, 6);
  const values = { from: mm(along[0]), to: mm(along[1]), side: sideWords(across, term), ...outwards(across, mm) };
  return surface === 'shell' ? t('manyMap.onShell', values) : t('manyMap.onTransom', values);
};

const sideWords = ([from, to]: Area['across'], term: Words['term']): string => {
  if (from >= 0) return term('port');
  return to <= 0 ? term('starboard') : `${term('starboard')}, ${term('port')}`;
};

/** Distances from the keel or centreline; of an area that lies over it, one to each side. */
const outwards = ([from, to]: Area['across'], mm: (value: number) => string): { near: string; far: string } => {
  if (from < 0 && to > 0) return { near: mm(-from), far: mm(to) };
  const [a, b] = [Math.abs(from), Math.abs(to)];
  return { near: mm(Math.min(a, b)), far: mm(Math.max(a, b)) };
};
