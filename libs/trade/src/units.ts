/** What a unit measures. Two units convert into each other only within one dimension. */
export type Dimension =
  | 'length'
  | 'mass'
  | 'area'
  | 'volume'
  | 'arealMass'
  | 'temperature'
  | 'time'
  | 'pressure'
  | 'hardness'
  | 'viscosity'
  | 'colorDifference'
  | 'count'
  | 'ratio';

/** How a unit becomes its SI base: `si = (value + (offset ?? 0)) * factor`. */
export interface Unit {
  readonly dimension: Dimension;
  readonly factor: number;
  readonly offset?: number;
}

// Exact by definition: inch 25.4 mm and avoirdupois pound 0.45359237 kg (international yard and pound, 1959),
// ounce = pound / 16, US gallon = 231 cubic inches.
const OUNCE_KG = 0.028349523125;
const FT2_M2 = 0.09290304;
const YD2_M2 = 0.83612736;

// Pound-force per square inch: 0.45359237 kg x 9.80665 m/s2 / (0.0254 m)2. Inch of mercury: conventional, 25.4 x 133.322387415 Pa.
const PSI_PA = (0.45359237 * 9.80665) / 0.0254 ** 2;
const IN_HG_PA = 25.4 * 133.322387415;

const TABLE = {
  m: { dimension: 'length', factor: 1 },
  mm: { dimension: 'length', factor: 1e-3 },
  um: { dimension: 'length', factor: 1e-6 },
  in: { dimension: 'length', factor: 0.0254 },
  ft: { dimension: 'length', factor: 0.3048 },
  mil: { dimension: 'length', factor: 2.54e-5 },
  kg: { dimension: 'mass', factor: 1 },
  g: { dimension: 'mass', factor: 1e-3 },
  lb: { dimension: 'mass', factor: 0.45359237 },
  oz: { dimension: 'mass', factor: OUNCE_KG },
  t: { dimension: 'mass', factor: 1000 },
  m2: { dimension: 'area', factor: 1 },
  ft2: { dimension: 'area', factor: FT2_M2 },
  yd2: { dimension: 'area', factor: YD2_M2 },
  L: { dimension: 'volume', factor: 1e-3 },
  mL: { dimension: 'volume', factor: 1e-6 },
  usgal: { dimension: 'volume', factor: 0.003785411784 },
  usfloz: { dimension: 'volume', factor: 0.003785411784 / 128 },
  m3: { dimension: 'volume', factor: 1 },
  'g/m2': { dimension: 'arealMass', factor: 1e-3 },
  'kg/m2': { dimension: 'arealMass', factor: 1 },
  'oz/ft2': { dimension: 'arealMass', factor: OUNCE_KG / FT2_M2 },
  'oz/yd2': { dimension: 'arealMass', factor: OUNCE_KG / YD2_M2 },
  C: { dimension: 'temperature', factor: 1, offset: 273.15 },
  F: { dimension: 'temperature', factor: 5 / 9, offset: 459.67 },
  K: { dimension: 'temperature', factor: 1 },
  s: { dimension: 'time', factor: 1 },
  min: { dimension: 'time', factor: 60 },
  h: { dimension: 'time', factor: 3600 },
  d: { dimension: 'time', factor: 86400 },
  Pa: { dimension: 'pressure', factor: 1 },
  kPa: { dimension: 'pressure', factor: 1000 },
  bar: { dimension: 'pressure', factor: 100000 },
  mbar: { dimension: 'pressure', factor: 100 },
  psi: { dimension: 'pressure', factor: PSI_PA },
  inHg: { dimension: 'pressure', factor: IN_HG_PA },
  'mPa.s': { dimension: 'viscosity', factor: 1e-3 },
  dE: { dimension: 'colorDifference', factor: 1 },
  Barcol: { dimension: 'hardness', factor: 1 },
  pc: { dimension: 'count', factor: 1 },
  '%': { dimension: 'ratio', factor: 0.01 },
  '1': { dimension: 'ratio', factor: 1 },
} as const satisfies Record<string, Unit>;

/** The code of a unit as it is stored, sent and printed. */
export type UnitCode = Extract<keyof typeof TABLE, string>;

/**
 * Every unit the records know, with its exact factor to the SI base of its dimension.
 *
 * Bases: m, kg, m2, m3, kg/m2, K, s, Pa, Pa s; Barcol, color difference, pieces and the fraction stand for themselves.
 * `oz` is the avoirdupois ounce of mass. Mat goes by oz/ft2 and cloth by oz/yd2, so a bare ounce is no areal mass.
 */
export const UNITS: Readonly<Record<UnitCode, Unit>> = TABLE;

/** Whether a text is the code of a known unit. Codes are case-sensitive. */
export const isUnit = (code: string): code is UnitCode => Object.hasOwn(UNITS, code);

/** What a unit measures. */
export const dimensionOf = (unit: UnitCode): Dimension => UNITS[unit].dimension;

/** Converts a value to the SI base of its dimension, without rounding. Temperatures are points, not differences. */
export const toSi = (value: number, unit: UnitCode): number => {
  const { factor, offset = 0 } = UNITS[unit];
  return (value + offset) * factor;
};

/** Converts a value from the SI base of the unit's dimension, without rounding. */
export const fromSi = (si: number, unit: UnitCode): number => {
  const { factor, offset = 0 } = UNITS[unit];
  return si / factor - offset;
};
