/**
 * A method was given data it has no answer for.
 *
 * Every error of this package extends this class, carries a stable `code` and the data it was raised over.
 */
export abstract class StatisticsError extends Error {
  abstract readonly code: string;

  constructor(
    message: string,
    readonly data: Readonly<Record<string, unknown>>,
  ) {
    super(message);
    this.name = new.target.name;
  }
}

/** A number or a list that a method cannot work with. Data: `name`, `value`. */
export class InputInvalid extends StatisticsError {
  readonly code = 'input-invalid';

  constructor(name: string, value: unknown, must: string) {
    super(`${name} is ${String(value)}; it must be ${must}.`, { name, value });
  }
}

/** There is too little to estimate from. Data: `what`, `has`, `needs`. */
export class TooLittle extends StatisticsError {
  readonly code = 'too-little';

  constructor(what: string, has: number, needs: number) {
    super(`There are ${has} ${what}; this needs at least ${needs}.`, { what, has, needs });
  }
}
