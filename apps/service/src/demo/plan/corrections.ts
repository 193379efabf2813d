import { LEAD, RECEIVING } from './people.js';
import { draft, type Seeded } from './step.js';
import type { Supplied } from './supply.js';
import { instant, workingDayOf } from './working-days.js';

/** What was entered wrongly at first and corrected later: an amount on a layer, and a drum in a tank fill. */
export const withCorrections = (demo: Seeded, supplied: readonly Supplied[]): readonly Supplied[] =>
  [misreadScale, misreadDrum].reduce((sofar, correction) => correction(demo, sofar), supplied);

type Correction = (demo: Seeded, supplied: readonly Supplied[]) => readonly Supplied[];

/** The layer whose first digits were swapped, and which of its uses. */
const SWAPPED = { layer: 'TS86-112-H H4', use: 1 };

const misreadScale: Correction = (demo, supplied) => {
  const right = named(supplied, SWAPPED.layer).taken[SWAPPED.use]?.amount;
  if (right === undefined) throw new Error(`The plan has no use ${SWAPPED.use} of ${SWAPPED.layer}.`);
  const [first = '', second = '', ...others] = right.quantity;
  const wrong = { ...right, quantity: [second, first, ...others].join('') };
  const entered = supplied.map((each) =>
    each.name === SWAPPED.layer
      ? { ...each, taken: each.taken.map((taken, i) => (i === SWAPPED.use ? { ...taken, amount: wrong } : taken)) }
      : each,
  );
  return [
    ...entered,
    theNextMorning(demo, named(supplied, SWAPPED.layer), LEAD, {
      ...{ row: SWAPPED.use + 1, reason: 'Two digits were swapped when it was entered.' },
      set: { kind: 'used', amount: right },
    }),
  ];
};

/** The fill for which the label of the drum was misread; its heel is the first row of inputs, the drum the second. */
const MISREAD_FILL = 'fill T1-13';

const misreadDrum: Correction = (demo, supplied) => {
  const entered = named(supplied, MISREAD_FILL).taken[0]?.lot ?? '';
  const input = entered.replace(/\d+$/, (digits) => String(Number(digits) - 1).padStart(digits.length, '0'));
  return [
    ...supplied,
    theNextMorning(demo, named(supplied, MISREAD_FILL), RECEIVING, {
      ...{ row: 2, reason: `The label on the drum says ${input}; it was misread.` },
      set: { kind: 'lot input', input },
    }),
  ];
};

const named = (supplied: readonly Supplied[], name: string): Supplied => {
  const found = supplied.find((each) => each.name === name);
  if (found === undefined) throw new Error(`The plan has no step ${name} to correct.`);
  return found;
};

interface Corrected {
  readonly row: number;
  readonly reason: string;
  readonly set: Parameters<typeof draft<'correct'>>[2]['set'];
}

const theNextMorning = (
  demo: Seeded,
  { name, at }: Supplied,
  by: string,
  { row, reason, set }: Corrected,
): Supplied => ({
  ...draft(
    'correct',
    { name: `${name} corrected`, at: instant(workingDayOf(at) + 1, '08:20'), by },
    { corrects: demo.id(name, row), reason, set },
  ),
  taken: [],
});
