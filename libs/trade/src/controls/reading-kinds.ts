import type { Dimension } from '../units.js';

/** A control of the shop that is read: what it measures and with what. */
export interface ReadingKind {
  readonly dimension: Dimension;
  /** Equipment it is read with; empty when none is asked. */
  readonly equipment: readonly string[];
  /** What it is read on. */
  readonly on: readonly ('layer' | 'repair' | 'joint' | 'part' | 'lot')[];
  /** Highest and lowest value that can be, in the SI base of its dimension; nothing beyond is recorded. */
  readonly possible?: { readonly min?: number; readonly max?: number };
}

/**
 * The controls of the shop by name (common practice). What is acceptable comes from a schedule or a material's data,
 * never from here.
 */
export const READING_KINDS_OF_THE_SHOP = {
  'wet film': { dimension: 'length', equipment: ['gauge'], on: ['layer', 'repair'], possible: { min: 0 } },
  thickness: {
    dimension: 'length',
    equipment: ['caliper', 'ultrasonic gauge'],
    on: ['layer', 'repair', 'part'],
    possible: { min: 0 },
  },
  'Barcol hardness': {
    dimension: 'hardness',
    equipment: ['impressor'],
    on: ['layer', 'repair'],
    possible: { min: 0, max: 100 },
  },
  catalyst: {
    dimension: 'ratio',
    equipment: ['scale', 'dispenser'],
    on: ['layer', 'lot', 'repair'],
    possible: { min: 0, max: 1 },
  },
  'gel time': { dimension: 'time', equipment: ['timer'], on: ['layer', 'lot', 'repair'], possible: { min: 0 } },
  'peak exotherm': { dimension: 'temperature', equipment: ['thermometer'], on: ['layer', 'lot'], possible: { min: 0 } },
  viscosity: { dimension: 'viscosity', equipment: ['viscometer', 'flow cup'], on: ['lot'], possible: { min: 0 } },
  'part weight': { dimension: 'mass', equipment: ['scale'], on: ['part'], possible: { min: 0 } },
  'bedding vacuum': { dimension: 'pressure', equipment: ['vacuum gauge'], on: ['layer'], possible: { min: 0 } },
  'bond gap': { dimension: 'length', equipment: ['feeler gauge', 'caliper'], on: ['joint'], possible: { min: 0 } },
  'color difference': {
    dimension: 'colorDifference',
    equipment: ['colorimeter'],
    on: ['layer', 'repair'],
    possible: { min: 0 },
  },
  'glass content': {
    dimension: 'ratio',
    equipment: ['scale'],
    on: ['layer', 'repair', 'part'],
    possible: { min: 0, max: 1 },
  },
  moisture: { dimension: 'ratio', equipment: ['moisture meter'], on: ['layer', 'part'], possible: { min: 0, max: 1 } },
} as const satisfies Readonly<Record<string, ReadingKind>>;

export type ReadingKindName = keyof typeof READING_KINDS_OF_THE_SHOP;

/** Weight of a part against its target, as a fraction over (positive) or under it; null when it cannot be judged. */
export const weightAgainstTarget = (kg: number, targetKg: number): number | null =>
  kg > 0 && targetKg > 0 && Number.isFinite(kg) && Number.isFinite(targetKg) ? kg / targetKg - 1 : null;
