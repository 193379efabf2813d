import { LONG_STEP } from './steps.sql.js';

/** Reads numbers that are packed as steps from one to the next. */
export class Numbers {
  private room = new Int32Array(0);

  /** @returns the numbers, there only until others are read */
  of(steps: Uint8Array): Int32Array {
    if (this.room.length < steps.length) this.room = new Int32Array(2 * steps.length);
    const { room } = this;
    let [number, count] = [0, 0];
    for (let at = 0; at < steps.length; at += 1) {
      let step = steps[at] as number;
      if (step === LONG_STEP) {
        step = longAt(steps, at + 1);
        at += 4;
      }
      number += step;
      room[count] = number;
      count += 1;
    }
    return room.subarray(0, count);
  }
}

const longAt = (bytes: Uint8Array, at: number): number =>
  ((bytes[at] as number) << 24) |
  ((bytes[at + 1] as number) << 16) |
  ((bytes[at + 2] as number) << 8) |
  (bytes[at + 3] as number);
