import type { Check } from '../check.js';
import { AIR_AND_CURE } from './air-and-cure.js';
import { EVIDENCE } from './evidence.js';
import { JUDGING } from './judging.js';
import { LAMINATE } from './laminate.js';
import { MEASURES } from './measures.js';
import { STATISTICS_OF_AGES } from './statistics-ages.js';
import { STATISTICS_OF_CHARTS } from './statistics-charts.js';
import { STATISTICS_OF_LOTS } from './statistics-lots.js';
import { STATISTICS_OF_TABLES } from './statistics-tables.js';

/** Every check by its name. */
export const CHECKS: Readonly<Record<string, Check>> = {
  ...MEASURES,
  ...AIR_AND_CURE,
  ...LAMINATE,
  ...JUDGING,
  ...EVIDENCE,
  ...STATISTICS_OF_TABLES,
  ...STATISTICS_OF_AGES,
  ...STATISTICS_OF_CHARTS,
  ...STATISTICS_OF_LOTS,
};
