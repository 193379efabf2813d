import { TradeError } from '../errors.js';

/** Temperature and humidity from which no dew point follows. Data: `airC`, `humidityPercent`. */
export class ClimateInvalid extends TradeError {
  readonly code = 'climate-invalid';
}

/** Magnus constants over water: alpha (hPa), beta (1), lambda (C); valid from -45 to 60 C (Sonntag 1990; WMO Guide, Annex 4.B). */
export const MAGNUS = { alphaHPa: 6.112, beta: 17.62, lambdaC: 243.12, fromC: -45, toC: 60 } as const;

/**
 * Dew point (C) of air at a temperature (C) and relative humidity (per cent), by the Magnus formula.
 *
 * Throws ClimateInvalid when the humidity is not above 0 and at most 100, or the temperature is outside -45 to 60 C.
 * Within 0.3 C of a precise formula over that range (sensor maker's note on Sonntag 1990).
 */
export const dewPointC = (airC: number, humidityPercent: number): number => {
  const why = whyNoDewPoint(airC, humidityPercent);
  if (why !== undefined) throw new ClimateInvalid(why, { airC, humidityPercent });
  const gamma = Math.log(humidityPercent / 100) + (MAGNUS.beta * airC) / (MAGNUS.lambdaC + airC);
  return (MAGNUS.lambdaC * gamma) / (MAGNUS.beta - gamma);
};

/**
 * Pressure of saturated water vapour (Pa) over water at a temperature (C), by the Magnus formula.
 *
 * Within 0.4 % of the ASHRAE formulation at 5 and 25 C. Throws ClimateInvalid outside -45 to 60 C.
 */
export const saturationPressurePa = (airC: number): number => {
  const why = whyNoDewPoint(airC, 100);
  if (why !== undefined) throw new ClimateInvalid(why, { airC });
  return MAGNUS.alphaHPa * 100 * Math.exp((MAGNUS.beta * airC) / (MAGNUS.lambdaC + airC));
};

/** Why no dew point follows from a temperature and a humidity; undefined when one does. */
export const whyNoDewPoint = (airC: number, humidityPercent: number): string | undefined => {
  if (!(humidityPercent > 0 && humidityPercent <= 100))
    return `Relative humidity is ${humidityPercent} %; it must be more than 0 and at most 100.`;
  if (!(airC >= MAGNUS.fromC && airC <= MAGNUS.toC))
    return `Air temperature is ${airC} C; the formula holds from ${MAGNUS.fromC} to ${MAGNUS.toC} C.`;
  return undefined;
};
