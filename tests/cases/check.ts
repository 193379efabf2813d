import { z } from 'zod';

/** The topics of the arithmetic, in the order they are listed. */
export const TOPICS = [
  'units',
  'hin',
  'film',
  'climate',
  'catalyst',
  'cure',
  'laminate',
  'hardness',
  'blister',
  'flaw',
  'repair',
  'gauge',
  'retention',
  'control',
  'mixing',
  'areal mass',
  'evidence',
  'statistics',
] as const;
export type Topic = (typeof TOPICS)[number];

/** A named check of the library that a case can ask for. */
export interface Check {
  readonly topic: Topic;
  readonly says: string;
  readonly input: z.ZodType;
  readonly run: (input: unknown) => unknown;
}

/** Describes a check: its input is refused unless it has exactly these keys. */
export const check = <S extends z.ZodRawShape>(
  topic: Topic,
  says: string,
  shape: S,
  run: (input: z.output<z.ZodObject<S>>) => unknown,
): Check => {
  const input = z.strictObject(shape);
  return { topic, says, input, run: (given) => run(input.parse(given) as z.output<z.ZodObject<S>>) };
};

/** Any number a JSON file can hold; the words NaN and Infinity stand for what it cannot. */
export const anyNumber = z.union([
  z.number(),
  z.enum(['NaN', 'Infinity', '-Infinity']).transform((word) => Number(word)),
]);
