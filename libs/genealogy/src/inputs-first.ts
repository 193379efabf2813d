import { LotCycle } from './errors.js';

/** The lots that a lot is directly made of; none for a source. */
export type InputsOf = (lot: string) => readonly string[];

interface Step {
  readonly lot: string;
  readonly inputs: readonly string[];
  next: number;
}

/**
 * Everything upstream of the given lots, themselves included, each after all it is made of.
 *
 * Keeps its own stack: a tank's chain of fills is thousands of lots deep, more than the call stack holds.
 *
 * @throws LotCycle when a lot is upstream of itself.
 */
export const inputsFirst = (lots: Iterable<string>, inputsOf: InputsOf): readonly string[] => {
  const done = new Set<string>();
  for (const lot of lots) descend(lot, inputsOf, done);
  return [...done];
};

const descend = (start: string, inputsOf: InputsOf, done: Set<string>): void => {
  if (done.has(start)) return;
  const path: Step[] = [{ lot: start, inputs: inputsOf(start), next: 0 }];
  const open = new Set([start]);
  for (let step = path.at(-1); step; step = path.at(-1)) {
    const input = step.inputs[step.next++];
    if (input === undefined) {
      done.add(step.lot);
      open.delete(step.lot);
      path.pop();
    } else if (open.has(input)) {
      throw new LotCycle(cycleAt(input, path));
    } else if (!done.has(input)) {
      path.push({ lot: input, inputs: inputsOf(input), next: 0 });
      open.add(input);
    }
  }
};

const cycleAt = (lot: string, path: readonly Step[]): string[] => {
  const lots = path.map((step) => step.lot);
  return [...lots.slice(lots.indexOf(lot)), lot];
};
