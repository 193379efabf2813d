import type { Role } from '@hull-record/contracts';
import { type FieldError, Refusal } from '../refusals.js';

/** Nobody is signed in, or the session has ended. */
export class SignInNeeded extends Refusal {
  readonly code = 'sign-in-needed';
  readonly reason = 'unknown caller';
  constructor() {
    super('Sign in first.');
  }
}

/** Badge and secret do not belong together, or there is no such badge: which of the two is not said. */
export class WrongSecret extends Refusal {
  readonly code = 'wrong-badge-or-secret';
  readonly reason = 'unknown caller';
  override readonly errors = [
    {
      pointer: '/secret',
      detail:
        'Check badge and PIN. In a browser that is not an enrolled device only a passphrase serves. Lost it? An administrator gives a new one-time code.',
    },
  ];
  constructor() {
    super('Badge and PIN or passphrase do not belong together.');
  }
}

/** Too many wrong tries. */
export class TooManyTries extends Refusal {
  readonly code = 'too-many-tries';
  readonly reason = 'too many';
  override readonly data: Readonly<Record<string, unknown>>;
  constructor(readonly retryAfterS: number) {
    super(
      `Too many wrong tries. Try again in ${retryAfterS < 120 ? `${retryAfterS} s` : `${Math.ceil(retryAfterS / 60)} min`}.`,
    );
    this.data = { retryAfterS };
  }
}

/** What is asked is not for the roles of who asks. */
export class NotAllowed extends Refusal {
  readonly code = 'not-allowed';
  readonly reason = 'forbidden';
  constructor(detail = 'This is not for your roles: ask somebody whose it is, or an administrator for the role.') {
    super(detail);
  }
}

/** A change without the secret of the page. */
export class CsrfMissing extends Refusal {
  readonly code = 'csrf-missing';
  readonly reason = 'forbidden';
  constructor() {
    super(
      'Send the `csrf` of GET /api/session in the header x-hull-record-csrf. If you did, you signed in anew since: load the page again.',
    );
  }
}

/** The record names another person than the one who is signed in. */
export class EnteredByAnother extends Refusal {
  readonly code = 'entered-by-another';
  readonly reason = 'forbidden';
  override readonly errors: readonly FieldError[];
  constructor(named: string, signedIn: string) {
    super(`Badge ${signedIn} is signed in, and the record names ${named}.`);
    this.errors = [
      {
        pointer: '/enteredBy',
        detail: `Enter it as ${signedIn}, with ${named} among those who did it, or let ${named} sign in.`,
      },
    ];
  }
}

/** The record names another device than the one it comes from. */
export class EnteredElsewhere extends Refusal {
  readonly code = 'entered-elsewhere';
  readonly reason = 'forbidden';
  override readonly errors: readonly FieldError[];
  constructor(named: string, here: string) {
    super(`This is device ${here}, and the record names ${named}.`);
    this.errors = [{ pointer: '/device', detail: `Enter it as device ${here}.` }];
  }
}

/** Who entered it on the device was not allowed to then. */
export class NotAllowedThen extends Refusal {
  readonly code = 'not-allowed-then';
  readonly reason = 'forbidden';
  override readonly errors: readonly FieldError[];
  constructor(badge: string, roles: readonly Role[]) {
    super(`Badge ${badge} was not allowed to do this when it was entered.`);
    this.errors = [{ pointer: '/enteredBy', detail: `This is for ${roles.join(' or ')}: let one of them enter it.` }];
  }
}

/** The credential of the device was taken from it. */
export class DeviceRevoked extends Refusal {
  readonly code = 'device-revoked';
  readonly reason = 'forbidden';
  override readonly data: Readonly<Record<string, unknown>>;
  /** @param kept id under which what it sent is kept, or null */
  constructor(kept: string | null) {
    super(
      kept === null
        ? 'The credential of this device was revoked, and nothing more is kept of it: ask an administrator.'
        : 'The credential of this device was revoked. What it sent is kept; quality admits it or sets it aside.',
    );
    this.data = { kept };
  }
}
