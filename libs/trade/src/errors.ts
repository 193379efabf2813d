/**
 * A rule of the trade was asked something it has no answer for.
 *
 * Every error of this package extends this class, carries a stable `code` and the data it was raised over.
 */
export abstract class TradeError extends Error {
  abstract readonly code: string;

  constructor(
    message: string,
    readonly data: Readonly<Record<string, unknown>>,
  ) {
    super(message);
    this.name = new.target.name;
  }
}
