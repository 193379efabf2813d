import type { Climate } from '@hull-record/contracts';
import { fromSi, judgeSpot, judgeSurfaceMargin, toSi, type Limits, type MarginRule } from '@hull-record/trade';

/** The climate of a layer as it is typed: air and mold in one unit, humidity in per cent. */
export interface ClimateTyped {
  readonly air: string;
  readonly humidity: string;
  readonly mold: string;
}

export const NO_CLIMATE: ClimateTyped = { air: '', humidity: '', mold: '' };

/** A number that was typed with a point or a comma; undefined of nothing, or of what is no number. */
const numberOf = (typed: string): number | undefined => {
  const text = typed.trim().replace(',', '.');
  const value = Number(text);
  return text === '' || !Number.isFinite(value) ? undefined : value;
};

type TemperatureUnit = 'C' | 'F';

/** What goes into the record: that which is a number, in the unit it was read in; undefined when there is none. */
export const climateOf = ({ air, humidity, mold }: ClimateTyped, unit: TemperatureUnit): Climate | undefined => {
  const [airValue, humidityValue, moldValue] = [numberOf(air), numberOf(humidity), numberOf(mold)];
  const climate: Climate = {
    ...(airValue === undefined ? {} : { airTemperature: { value: airValue, unit } }),
    ...(moldValue === undefined ? {} : { moldTemperature: { value: moldValue, unit } }),
    ...(humidityValue === undefined || humidityValue < 0 || humidityValue > 100
      ? {}
      : { relativeHumidity: { value: humidityValue, unit: '%' as const } }),
  };
  return Object.keys(climate).length === 0 ? undefined : climate;
};

/** What is said of the climate at once; the service judges it again by the same rules, and keeps its verdict. */
export interface ClimateJudged {
  readonly air: 'inside' | 'low' | 'high' | null;
  readonly humidity: 'inside' | 'low' | 'high' | null;
  /** How far the surface is above the dew point, in C; null while one of the three is missing. */
  readonly margin: {
    readonly enough: boolean;
    readonly marginC: number;
    readonly dewPointC: number;
  } | null;
}

/** Judges air and humidity by the limits of the layer, and the mold's surface by the dew-point rule of the plant. */
export const judgeClimateTyped = (
  climate: Climate,
  limits: { readonly airTemperature?: Limits | undefined; readonly relativeHumidity?: Limits | undefined } | undefined,
  rule: MarginRule,
): ClimateJudged => ({
  air: sideOf(climate.airTemperature, limits?.airTemperature),
  humidity: sideOf(climate.relativeHumidity, limits?.relativeHumidity),
  margin: marginOf(climate, rule),
});

const sideOf = (
  measured: { readonly value: number; readonly unit: 'C' | 'F' | 'K' | '%' } | undefined,
  limits: Limits | undefined,
): ClimateJudged['air'] => {
  if (measured === undefined || limits === undefined) return null;
  const { verdict, side } = judgeSpot({ low: measured.value, unit: measured.unit }, limits);
  if (verdict === 'cannot be judged') return null;
  return verdict === 'inside' ? 'inside' : (side ?? 'low');
};

const marginOf = (
  { airTemperature: air, moldTemperature: mold, relativeHumidity: humidity }: Climate,
  rule: MarginRule,
): ClimateJudged['margin'] => {
  if (!air || !mold || !humidity) return null;
  const celsius = ({ value, unit }: { value: number; unit: 'C' | 'F' | 'K' }): number =>
    unit === 'C' ? value : fromSi(toSi(value, unit), 'C');
  const measured = { airC: celsius(air), surfaceC: celsius(mold), humidityPercent: humidity.value };
  const { verdict, marginC, dewPointC } = judgeSurfaceMargin(measured, rule);
  return marginC === null || dewPointC === null ? null : { enough: verdict === 'enough', marginC, dewPointC };
};
