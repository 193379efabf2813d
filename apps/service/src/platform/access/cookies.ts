import { parseCookie, type SerializeOptions } from 'cookie';
import type { Request, Response } from 'express';

/** A cookie of ours. Over TLS its name has the prefix with which browsers hold it to this host and to TLS (RFC 6265bis). */
export type CookieName = 'session' | 'device' | 'open-id';

const LIFE_S: Readonly<Record<CookieName, number | undefined>> = {
  session: undefined,
  device: 400 * 24 * 3_600,
  'open-id': 600,
};

/** Writes and reads the cookies of the service: for HTTP alone, and of this site alone. */
export class Cookies {
  /** @param secure whether browsers reach the service over TLS */
  constructor(private readonly secure: boolean) {}

  nameOf(name: CookieName): string {
    return `${this.secure ? '__Host-' : ''}hull-record-${name}`;
  }

  read(request: Request, name: CookieName): string | undefined {
    return parseCookie(request.headers.cookie ?? '')[this.nameOf(name)];
  }

  set(response: Response, name: CookieName, value: string): void {
    const maxAge = LIFE_S[name];
    response.cookie(this.nameOf(name), value, {
      ...this.options(name),
      ...(maxAge === undefined ? {} : { maxAge: maxAge * 1_000 }),
    });
  }

  clear(response: Response, name: CookieName): void {
    response.clearCookie(this.nameOf(name), this.options(name));
  }

  /** The sign-in of the office comes back from another site: that one cookie has to come with it. */
  private options(
    name: CookieName,
  ): Pick<SerializeOptions, 'httpOnly' | 'secure' | 'path'> & { sameSite: 'strict' | 'lax' } {
    return { httpOnly: true, secure: this.secure, path: '/', sameSite: name === 'open-id' ? 'lax' : 'strict' };
  }
}
