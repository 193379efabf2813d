import { z } from 'zod';
import { LABEL_STOCK_NAMES } from '@hull-record/trade';
import { Code } from './envelope.js';
import { LABELLED, readLabelPath } from './label-path.js';

/** Asks for labels on a stock, in the order in which they are named; the same one may be named again. */
export const AskLabels = z
  .object({
    stock: z.enum(LABEL_STOCK_NAMES),
    labels: z
      .array(z.object({ of: z.enum(LABELLED), code: Code.describe('a hull also by a HIN it ever had') }))
      .min(1)
      .max(500),
    skip: z
      .number()
      .int()
      .nonnegative()
      .default(0)
      .describe('places on the first sheet that are used already, row by row from the top left'),
  })
  .meta({ id: 'AskLabels' });
export type AskLabels = z.output<typeof AskLabels>;

const size = z.object({ widthMm: z.number(), heightMm: z.number() });
const spot = z.object({ x: z.number(), y: z.number() });

export const LabelStockView = z
  .object({
    name: z.enum(LABEL_STOCK_NAMES),
    page: size.describe('a sheet, or one label of a roll'),
    label: size,
    columns: z.number(),
    rows: z.number(),
    firstMm: spot.describe('left and top edge of the first label'),
    pitchMm: spot.describe('from one label to the next'),
    insetMm: z.number().describe('nothing is printed nearer to the edge of a label'),
  })
  .meta({ id: 'LabelStockView' });
export type LabelStockView = z.output<typeof LabelStockView>;

export const LabelTargetQuery = z.object({
  path: z
    .string()
    .trim()
    .max(1_000)
    .refine(
      (path) => readLabelPath(path) !== null,
      'is not the path of one of our labels, such as /l/lot/VE-2231: scan the label again, or type the code on it',
    )
    .describe('what the square code of a label says'),
});
export type LabelTargetQuery = z.output<typeof LabelTargetQuery>;

export const LabelTargetView = z
  .object({
    of: z.enum(LABELLED),
    code: z.string(),
    page: z.string().nullable().describe('where the web page shows it, as #/lots/CODE; null: nowhere yet'),
  })
  .meta({ id: 'LabelTargetView' });
export type LabelTargetView = z.output<typeof LabelTargetView>;
