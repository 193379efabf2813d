/** How people reach the service, as configured. */
export class AccessSettings {
  /** Whether browsers reach the service over TLS. */
  readonly secure: boolean = false;
  /** Hosts under which it is reached besides this machine's own, in small letters, with the port when it is not the usual. */
  readonly hosts: readonly string[] = [];
  /** Whether who calls from this machine's own address is at this machine: not behind a proxy. */
  readonly localIsHere: boolean = true;
  /** Whether demo people may sign in. */
  readonly demo: boolean = false;
  /** Code and time zone of the plant. */
  readonly plant: { readonly code: string; readonly timeZone: string } = { code: 'MAIN', timeZone: 'UTC' };
  /** The sign-in of the office, when there is one. */
  readonly openId: OpenIdSettings | null = null;

  constructor(set: Partial<AccessSettings> = {}) {
    Object.assign(this, set);
  }
}

/** A provider of OpenID Connect. */
export interface OpenIdSettings {
  readonly name: string;
  readonly issuer: string;
  readonly clientId: string;
  readonly clientSecret: string;
  /** Where browsers reach this service; null at this machine's own address. */
  readonly publicUrl: string | null;
}
