import type { Climate } from '@hull-record/contracts';
import { toSi } from '@hull-record/trade';

/** Climate as entered, and in kelvin and as a fraction. */
export const climateColumns = (climate: Climate | undefined) => ({
  climateEntered: climate ?? null,
  airTemperatureK: climate?.airTemperature ? toSi(climate.airTemperature.value, climate.airTemperature.unit) : null,
  moldTemperatureK: climate?.moldTemperature ? toSi(climate.moldTemperature.value, climate.moldTemperature.unit) : null,
  relativeHumidity: climate?.relativeHumidity ? climate.relativeHumidity.value / 100 : null,
});
