import type { Check } from '../check.js';
import { AIR_AND_CURE } from './air-and-cure.js';
import { EVIDENCE } from './evidence.js';
import { JUDGING } from './judging.js';
import { LAMINATE } from './laminate.js';
import { MEASURES } from './measures.js';

/** Every check by its name. */
export const CHECKS: Readonly<Record<string, Check>> = {
  ...MEASURES,
  ...AIR_AND_CURE,
  ...LAMINATE,
  ...JUDGING,
  ...EVIDENCE,
};
