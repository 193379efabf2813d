import { Refusal } from '../../platform/refusals.js';

/** This plant has no sign-in of the office. */
export class OpenIdOff extends Refusal {
  readonly code = 'open-id-off';
  readonly reason = 'not found';
  constructor() {
    super('There is no sign-in of the office here: sign in with badge and passphrase.');
  }
}

/** The provider does not answer, or not as it should. */
export class OpenIdUnavailable extends Refusal {
  readonly code = 'open-id-unavailable';
  readonly reason = 'unavailable';
  constructor(name: string) {
    super(`The sign-in of ${name} does not answer. Try again in a minute, or sign in with badge and passphrase.`);
  }
}

/** The provider does not know this service, or not by this secret. */
export class OpenIdClientRefused extends Refusal {
  readonly code = 'open-id-client-refused';
  readonly reason = 'unavailable';
  constructor(name: string) {
    super(
      `The sign-in of ${name} refuses this service. Whoever runs it checks OPENID_CLIENT_ID and OPENID_CLIENT_SECRET; meanwhile sign in with badge and passphrase.`,
    );
  }
}

/** More sign-ins wait to be finished than people could have begun. */
export class TooManyBegun extends Refusal {
  readonly code = 'too-many-begun';
  readonly reason = 'too many';
  constructor() {
    super(
      'Too many sign-ins were begun and not finished. Try again in ten minutes, or sign in with badge and passphrase.',
    );
  }
}

/** Nothing waits for what came back: it was never begun here, it is used already, or it took too long. */
export class OpenIdNotBegun extends Refusal {
  readonly code = 'open-id-not-begun';
  readonly reason = 'unknown caller';
  constructor() {
    super('No sign-in waits here: it took longer than ten minutes, or it was used already. Begin again.');
  }
}

/** What came back does not prove who it is. What is wrong with it is logged, and not told. */
export class OpenIdNotProved extends Refusal {
  readonly code = 'open-id-not-proved';
  readonly reason = 'unknown caller';
  constructor() {
    super('What came back does not belong to the sign-in that was begun here. Begin again.');
  }
}

/** The provider did not sign the person in, or the person said no. */
export class OpenIdDeclined extends Refusal {
  readonly code = 'open-id-declined';
  readonly reason = 'unknown caller';
  constructor(name: string) {
    super(`The sign-in of ${name} was not completed there. Begin again, or sign in with badge and passphrase.`);
  }
}

/** The device is shared, and the provider took somebody for there who had signed in before. */
export class OpenIdNotFresh extends Refusal {
  readonly code = 'open-id-not-fresh';
  readonly reason = 'unknown caller';
  constructor(name: string) {
    super(`This device is shared, and the sign-in of ${name} did not ask who stands here. Sign in with badge and PIN.`);
  }
}

/** Nobody's badge is linked to the account. */
export class OpenIdNotLinked extends Refusal {
  readonly code = 'open-id-not-linked';
  readonly reason = 'forbidden';
  override readonly data: Readonly<Record<string, unknown>>;
  constructor(name: string, issuer: string, subject: string) {
    super(
      `This account of ${name} is linked to no badge. Give an administrator its issuer, ${issuer}, and its subject, ${subject}: by these it is linked.`,
    );
    this.data = { issuer, subject };
  }
}

/** The person has no role any more, or none yet. */
export class NoRole extends Refusal {
  readonly code = 'no-role';
  readonly reason = 'forbidden';
  constructor(badge: string) {
    super(`Badge ${badge} has no role here. An administrator gives one.`);
  }
}
