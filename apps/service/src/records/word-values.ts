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
  pc: 'pieces',
};

/** A unit as it is printed. */
export const unit = (code: string): string => PRINTED[code] ?? code;

/** A number with at most so many decimals, without zeros at the end; never rounded before it was judged. */
export const decimal = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
};

/** The amount of a lot as entered, and in kilograms beside it where it was entered in another unit. */
export interface EnteredAmount {
  readonly quantity: string;
  readonly unit: string;
  readonly kg: number;
}

export const amount = ({ quantity, unit: code, kg }: EnteredAmount): string =>
  code === 'kg' ? `${quantity} kg` : `${quantity} ${unit(code)} (${kilograms(kg)} kg)`;

/** Grams count below a kilogram. */
const kilograms = (kg: number): string => (kg < 0.001 ? String(Number(kg.toPrecision(2))) : decimal(kg, 3));

/** A reading as entered: a value, or the interval that a notch gauge bounds. */
export interface EnteredReading {
  readonly value: string;
  readonly below: string | null;
  readonly unit: string;
}

/** A reading as entered, and in micrometres or millimetres beside it where it is a length in another unit. */
export const reading = ({ value, below, unit: code }: EnteredReading): string => {
  const read = (low: string, high: string | null, name: string): string =>
    high === null ? `${low} ${name}` : `${low} to under ${high} ${name}`;
  const entered = read(value, below, unit(code));
  if (!isUnit(code) || dimensionOf(code) !== 'length' || code === 'um' || code === 'mm') return entered;
  const thin = toSi(Number(value), code) < 0.005;
  const metric = (text: string): string =>
    thin ? decimal(toSi(Number(text), code) * 1e6, 0) : decimal(toSi(Number(text), code) * 1e3, 2);
  return `${entered} (${read(metric(value), below === null ? null : metric(below), thin ? 'µm' : 'mm')})`;
};

const metres = (mm: number): string => `${(mm / 1000).toFixed(2)} m`;

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

export const limits = ({ min, max, unit: code }: PrintedLimits): string => {
  if (min !== undefined && max !== undefined) return `${min} to ${max} ${unit(code)}`;
  if (min !== undefined) return `at least ${min} ${unit(code)}`;
  return max === undefined ? 'none' : `at most ${max} ${unit(code)}`;
};

/** A kind of defect by its code: the words for it, and where they come from. */
export const defectKind = (code: string): Pick<DefectKindEntry, 'label' | 'source'> =>
  DEFECT_KINDS.find((kind) => kind.code === code) ?? { label: code, source: 'common practice' };

/** "1 layer", "2 layers"; the plural adds an s unless it is given. */
export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
