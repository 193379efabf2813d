import type { Labelled } from '@hull-record/contracts';
import { type FieldError, Refusal } from '../platform/refusals.js';

/** Labels were asked for what is not in the record; every one of them is named. */
export class LabelsNotThere extends Refusal {
  readonly code = 'not-found';
  readonly reason = 'unprocessable';
  override readonly errors: readonly FieldError[];
  /** @param missing what is not there; `index` counts the labels of the request from 0 */
  constructor(missing: readonly { readonly of: Labelled; readonly code: string; readonly index: number }[]) {
    super(missing.map(({ of, code }) => `There is no ${of} ${code}.`).join(' '));
    this.errors = missing.map(({ of, code, index }) => ({
      pointer: `/labels/${index}/code`,
      detail: `There is no ${of} ${code}: check the code, or record it first.`,
    }));
  }
}
