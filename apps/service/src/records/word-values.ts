import type { Climate } from '@hull-record/contracts';
import { DEFECT_KINDS, dimensionOf, isUnit, toSi, type DefectKindEntry, type Place } from '@hull-record/trade';

/** Units that print otherwise than they are stored; the others print as they are. */
const PRINTED: Readonly<Record<string, string>> = {
  um: 'µm',
  m2: 'm²',
  ft2: 'ft²',
  yd2: 'yd²',
  m3: 'm³',
  usgal: 'US gal',
  'g/m2': 'g/m²',
  'kg/m2': 'kg/m²',
  'oz/ft2': 'oz/ft²',
  'oz/yd2': 'oz/yd²',
  C: '°C',
  F: '°F',
};

/** A unit as it is printed. */
export const unit = (code: string): string => PRINTED[code] ?? code;

/** A number with at most so many decimals, without zeros at the end; never rounded before it was judged. */
export const decimal = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
};

/** A figure as entered, and in the unit that figures are compared in; null where that is the one it was entered in. */
export interface Figure {
  readonly entered: string;
  readonly compared: string | null;
}

/** In one line. */
export const inline = ({ entered, compared }: Figure): string =>
  compared === null ? entered : `${entered} (${compared})`;

/** In two lines, for a narrow column. */
export const stacked = ({ entered, compared }: Figure): string =>
  compared === null ? entered : `${entered}\n(${compared})`;

/** The amount of a lot as entered, and in kilograms. */
export interface EnteredAmount {
  readonly quantity: string;
  readonly unit: string;
  readonly kg: number;
}

export const amount = ({ quantity, unit: code, kg }: EnteredAmount): Figure => ({
  entered: `${quantity} ${unit(code)}`,
  compared: code === 'kg' ? null : `${kilograms(kg)} kg`,
});

/** Kilograms to the gram, or to two digits under a gram. */
export const kilograms = (kg: number): string => (kg < 0.001 ? String(Number(kg.toPrecision(2))) : decimal(kg, 3));

/** A reading as entered: a value, or the interval that a notch gauge bounds. */
export interface EnteredReading {
  readonly value: string;
  readonly below: string | null;
  readonly unit: string;
}

/** A reading as entered, and in micrometres or millimetres where it is a length in another unit. */
export const reading = ({ value, below, unit: code }: EnteredReading): Figure => {
  const interval = (low: string, high: string | null): string => (high === null ? low : `${low} to under ${high}`);
  const metric = metricLength(code, Number(value));
  return {
    entered: `${interval(value, below)} ${unit(code)}`,
    compared: metric && `${interval(metric.of(value), below === null ? null : metric.of(below))} ${metric.unit}`,
  };
};

/** How lengths like this one are given in micrometres, or from 5 mm in millimetres; null for what needs neither. */
const metricLength = (code: string, value: number): { of: (text: string | number) => string; unit: string } | null => {
  if (!isUnit(code) || dimensionOf(code) !== 'length' || code === 'um' || code === 'mm') return null;
  return toSi(value, code) < 0.005
    ? { of: (text) => decimal(toSi(Number(text), code) * 1e6, 0), unit: 'µm' }
    : { of: (text) => decimal(toSi(Number(text), code) * 1e3, 2), unit: 'mm' };
};

/** The space does not break: a number stays with its unit. */
const metres = (mm: number): string => `${(mm / 1000).toFixed(2)}\u00a0m`;

/** A place on a skin: side, and the two distances that fix it. */
export const place = (at: Place): string => {
  const side = at.side;
  return at.surface === 'shell'
    ? `${side}, ${metres(at.fromTransomMm)} from the transom, ${metres(at.girthMm)} along the skin`
    : `transom, ${side}, ${metres(at.offsetMm)} off the centreline, ${metres(at.heightMm)} up`;
};

/** The climate as entered; null when nothing was. */
export const climate = (entered: Climate | null): string | null => {
  if (entered === null) return null;
  const { airTemperature: air, moldTemperature: mold, relativeHumidity: humidity } = entered;
  const measured = [
    ...(air ? [`air ${air.value} ${unit(air.unit)}`] : []),
    ...(mold ? [`mold surface ${mold.value} ${unit(mold.unit)}`] : []),
    ...(humidity ? [`relative humidity ${humidity.value} %`] : []),
  ];
  return measured.length === 0 ? null : measured.join(', ');
};

/** Limits as a schedule sets them. */
export interface PrintedLimits {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly unit: string;
}

/** Limits as set, and of lengths also in micrometres or millimetres. */
export const limits = ({ min, max, unit: code }: PrintedLimits): string => {
  const range = (of: (value: number) => string): string => {
    if (min !== undefined && max !== undefined) return `${of(min)} to ${of(max)}`;
    return min === undefined ? `at most ${of(max ?? 0)}` : `at least ${of(min)}`;
  };
  if (min === undefined && max === undefined) return 'none';
  const metric = metricLength(code, max ?? min ?? 0);
  const entered = `${range(String)} ${unit(code)}`;
  return inline({ entered, compared: metric && `${range(metric.of)} ${metric.unit}` });
};

/** A kind of defect by its code: the words for it, and where they come from. */
export const defectKind = (code: string): Pick<DefectKindEntry, 'label' | 'source'> =>
  DEFECT_KINDS.find((kind) => kind.code === code) ?? { label: code, source: 'common practice' };

/** "1 layer", "2 layers"; the plural adds an s unless it is given. */
export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
