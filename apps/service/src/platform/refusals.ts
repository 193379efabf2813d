/** A wrong field: JSON pointer (RFC 6901) into the request, and what to do about it. */
export interface FieldError {
  readonly pointer: string;
  readonly detail: string;
}

/** A named refusal. The problem filter alone knows which HTTP status it becomes. */
export abstract class Refusal extends Error {
  /** Stable code; the problem's type is `/problems/` and this. */
  abstract readonly code: string;
  abstract readonly reason:
    | 'malformed'
    | 'unknown caller'
    | 'forbidden'
    | 'not found'
    | 'conflict'
    | 'unprocessable'
    | 'too large'
    | 'unsupported'
    | 'too many'
    | 'unavailable';
  readonly errors: readonly FieldError[] = [];
  /** More data for the one who reads the problem. */
  readonly data: Readonly<Record<string, unknown>> = {};
}

export class InvalidRequest extends Refusal {
  readonly code = 'invalid-request';
  readonly reason = 'malformed';
  constructor(override readonly errors: readonly FieldError[]) {
    super(errors.map((error) => `${error.pointer || '/'}: ${error.detail}`).join('; '));
  }
}

/** Something the request names is not in the record. */
export class NotThere extends Refusal {
  readonly code = 'not-found';
  readonly reason: 'not found' | 'unprocessable';
  override readonly errors: readonly FieldError[];
  constructor(what: string, name: string, pointer?: string) {
    super(`There is no ${what} ${name}.`);
    this.reason = pointer === undefined ? 'not found' : 'unprocessable';
    this.errors =
      pointer === undefined
        ? []
        : [{ pointer, detail: `There is no ${what} ${name}: check the code, or record it first.` }];
  }
}

export class UnknownBadge extends Refusal {
  readonly code = 'unknown-badge';
  readonly reason = 'forbidden';
  override readonly errors: readonly FieldError[];
  constructor(badge: string, pointer: string) {
    super(`Badge ${badge} is not registered.`);
    this.errors = [{ pointer, detail: `Badge ${badge} is not registered: register the person first.` }];
  }
}

export class UnknownDevice extends Refusal {
  readonly code = 'unknown-device';
  readonly reason = 'forbidden';
  override readonly errors: readonly FieldError[];
  constructor(device: string) {
    super(`Device ${device} is not registered.`);
    this.errors = [{ pointer: '/device', detail: `Device ${device} is not registered: register it first.` }];
  }
}

export class ClientIdReused extends Refusal {
  readonly code = 'client-id-reused';
  readonly reason = 'conflict';
  override readonly errors = [{ pointer: '/id', detail: 'This id was used for another request: make a new one.' }];
  constructor(id: string) {
    super(`The id ${id} was used before, for another request.`);
  }
}

/** A rule of the record that the request cannot meet; it names the field and the remedy. */
export class Unprocessable extends Refusal {
  readonly reason = 'unprocessable';
  override readonly errors: readonly FieldError[];
  constructor(
    readonly code: string,
    message: string,
    pointer: string,
    override readonly data: Readonly<Record<string, unknown>> = {},
  ) {
    super(message);
    this.errors = [{ pointer, detail: message }];
  }
}

/** Somebody else was first, or the thing is in another state than the request assumes. */
export class Conflict extends Refusal {
  readonly reason = 'conflict';
  override readonly errors: readonly FieldError[];
  constructor(
    readonly code: string,
    message: string,
    pointer?: string,
    override readonly data: Readonly<Record<string, unknown>> = {},
  ) {
    super(message);
    this.errors = pointer === undefined ? [] : [{ pointer, detail: message }];
  }
}

/** The database does not answer now. Whether the request was recorded is not known; sending it again is safe. */
export class Unavailable extends Refusal {
  readonly code = 'try-later';
  readonly reason = 'unavailable';
  constructor() {
    super(
      'The database does not answer now. Send the same request again, with the same id: it is recorded once at most.',
    );
  }
}
