import { setImmediate as others } from 'node:timers/promises';
import type { CaseInputs } from './case-inputs.js';

/** So long it writes until others are served: a large plant has two hundred megabytes of inputs. */
const TURN_MS = 25;

/**
 * The canonical JSON (RFC 8785) of inputs, which are plain values: objects by their keys, lists as they are.
 *
 * The same text as `canonical` gives; lists of numbers, of which there may be millions, are written as they are: numbers are
 * written by RFC 8785 as JavaScript writes them. Throws TypeError when a number is not finite.
 */
export const inputsText = async (inputs: CaseInputs): Promise<string> => {
  const pieces: string[] = [];
  let began = performance.now();
  for (const [key, value] of byKeys(inputs)) {
    const list: readonly unknown[] = Array.isArray(value) ? value : [value];
    pieces.push(pieces.length > 0 ? ',' : '', JSON.stringify(key), Array.isArray(value) ? ':[' : ':');
    for (const [i, one] of list.entries()) {
      pieces.push(i > 0 ? `,${textOf(one)}` : textOf(one));
      if (performance.now() - began < TURN_MS) continue;
      await others();
      began = performance.now();
    }
    if (Array.isArray(value)) pieces.push(']');
  }
  return `{${pieces.join('')}}`;
};

const byKeys = (value: object): [string, unknown][] => Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));

const textOf = (value: unknown): string => {
  if (isNumbers(value)) return `[${finite(value).join(',')}]`;
  if (Array.isArray(value)) return `[${value.map(textOf).join(',')}]`;
  if (typeof value !== 'object' || value === null)
    return JSON.stringify(typeof value === 'number' ? finite([value])[0] : value);
  return `{${byKeys(value)
    .map(([key, inner]) => `${JSON.stringify(key)}:${textOf(inner)}`)
    .join(',')}}`;
};

type Numbers = Uint32Array | Float64Array | readonly number[];

const isNumbers = (value: unknown): value is Numbers =>
  value instanceof Uint32Array ||
  value instanceof Float64Array ||
  (Array.isArray(value) && typeof value[0] === 'number');

const finite = <T extends Numbers>(values: T): T => {
  for (let i = 0; i < values.length; i += 1)
    if (!Number.isFinite(values[i])) throw new TypeError('The inputs of a case have a number that is not finite.');
  return values;
};
