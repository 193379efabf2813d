import { LONG_STEP } from './steps.sql.js';

/** So many bytes follow `LONG_STEP`. */
export const LONG_STEP_BYTES = 4;

/** Whether bytes are those of one number alone, which is no small one. */
export const isOneAlone = (steps: Uint8Array): boolean =>
  steps.length === 1 + LONG_STEP_BYTES && steps[0] === LONG_STEP;

/** The step in the four bytes from a place on. */
export const longStepAt = (steps: Uint8Array, at: number): number =>
  ((steps[at] as number) << 24) |
  ((steps[at + 1] as number) << 16) |
  ((steps[at + 2] as number) << 8) |
  (steps[at + 3] as number);

/** Reads integers that are packed as steps from one to the next. */
export class Numbers {
  private room = new Int32Array(0);

  /** @returns the numbers, there only until others are read */
  of(steps: Uint8Array): Int32Array {
    if (this.room.length < steps.length) this.room = new Int32Array(2 * steps.length);
    const { room } = this;
    let [at, number, count] = [0, 0, 0];
    while (at < steps.length) {
      let step = steps[at] as number;
      at = (at + 1) | 0;
      if (step === LONG_STEP) {
        step = longStepAt(steps, at);
        at = (at + LONG_STEP_BYTES) | 0;
      }
      number = (number + step) | 0;
      room[count] = number;
      count = (count + 1) | 0;
    }
    return room.subarray(0, count);
  }
}
