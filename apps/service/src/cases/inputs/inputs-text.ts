import type { CaseInputs } from './case-inputs.js';

/**
 * The canonical JSON (RFC 8785) of inputs, which are plain values: objects by their keys, lists as they are.
 *
 * The same text as `canonical` gives; lists of numbers, of which there may be millions, are not taken apart for it: numbers
 * are written by RFC 8785 as JavaScript writes them. Throws TypeError when a number is not finite.
 */
export const inputsText = (inputs: CaseInputs): string => JSON.stringify(byKeys(inputs));

const byKeys = (value: unknown): unknown => {
  if (value instanceof Uint32Array || value instanceof Float64Array) return finite([...value]);
  if (Array.isArray(value)) return typeof value[0] === 'number' ? finite(value as number[]) : value.map(byKeys);
  if (typeof value === 'number') return finite([value])[0];
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, byKeys(inner)]),
  );
};

const finite = (values: number[]): number[] => {
  if (!values.every(Number.isFinite)) throw new TypeError('The inputs of a case have a number that is not finite.');
  return values;
};
