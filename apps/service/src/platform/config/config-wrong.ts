/** A setting is wrong or missing; the message names it, and what to set. */
export class ConfigWrong extends Error {
  override readonly name = 'ConfigWrong';
}
