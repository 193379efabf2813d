/** What a browser shows. */
export interface Shown {
  readonly url: URL;
  readonly status: number;
  readonly headers: Headers;
  readonly text: string;
}

interface Kept {
  readonly value: string;
  readonly strict: boolean;
}

const MOST_HOPS = 12;

/**
 * A browser as far as signing in needs one: it keeps cookies by origin, follows redirects and sends forms.
 *
 * A strict cookie does not go along when the step before was on another site (RFC 6265bis, section 5.2).
 */
export class Visitor {
  private readonly jars = new Map<string, Map<string, Kept>>();

  /** The value of a cookie. */
  cookie(at: string, name: string): string | undefined {
    return this.jarOf(new URL(at).origin).get(name)?.value;
  }

  /** Puts a cookie in as if it had been set there, as somebody who shares the machine could. */
  plant(at: string, name: string, value: string, strict = true): void {
    this.jarOf(new URL(at).origin).set(name, { value, strict });
  }

  /** Cookies for a request of a page of the same site, as a header. */
  header(at: string): string {
    return this.cookies(new URL(at), true);
  }

  /** Goes to an address and on through redirects, but not to one that `stop` matches: that is shown as not yet asked. */
  async go(address: string | URL, { from, stop }: { from?: URL; stop?: RegExp } = {}): Promise<Shown> {
    let [url, before] = [new URL(address), from];
    for (let hop = 0; hop < MOST_HOPS; hop += 1) {
      if (stop?.test(url.href)) return { url, status: 0, headers: new Headers(), text: '' };
      const answer = await this.ask(url, before, {});
      if (answer.status < 300 || answer.status > 399) return { url, ...answer };
      before = url;
      url = new URL(answer.headers.get('location') as string, url);
    }
    throw new Error(`It went round in circles at ${url.href}.`);
  }

  /** Sends the form of a page, filled in, and goes on from there. */
  async send({ url, text }: Shown, fields: Readonly<Record<string, string>>, stop?: RegExp): Promise<Shown> {
    const action = /<form[^>]* action="([^"]+)"/.exec(text)?.[1];
    if (action === undefined) throw new Error(`There is no form at ${url.href}: ${text.slice(0, 300)}`);
    const hidden = [...text.matchAll(/<input type="hidden" name="([^"]+)" value="([^"]*)"/g)].map((m) => [m[1], m[2]]);
    const body = new URLSearchParams({ ...(Object.fromEntries(hidden) as Record<string, string>), ...fields });
    const to = new URL(action, url);
    const answer = await this.ask(to, url, { method: 'POST', body });
    const next = answer.headers.get('location');
    return next === null ? { url: to, ...answer } : this.go(new URL(next, to), { from: to, ...(stop ? { stop } : {}) });
  }

  private async ask(url: URL, from: URL | undefined, init: RequestInit): Promise<Omit<Shown, 'url'>> {
    const cookie = this.cookies(url, from === undefined || from.origin === url.origin);
    const headers = { accept: 'text/html,*/*;q=0.8', ...(cookie ? { cookie } : {}) };
    const answer = await fetch(url, { ...init, headers, redirect: 'manual' });
    const jar = this.jarOf(url.origin);
    for (const line of answer.headers.getSetCookie()) keep(jar, line);
    return { status: answer.status, headers: answer.headers, text: await answer.text() };
  }

  private cookies(url: URL, sameSite: boolean): string {
    const sent = [...this.jarOf(url.origin)].filter(([, { strict }]) => sameSite || !strict);
    return sent.map(([name, { value }]) => `${name}=${value}`).join('; ');
  }

  private jarOf(origin: string): Map<string, Kept> {
    const jar = this.jars.get(origin) ?? new Map<string, Kept>();
    this.jars.set(origin, jar);
    return jar;
  }
}

const keep = (jar: Map<string, Kept>, line: string): void => {
  const [, name = '', value = ''] = /^([^=]+)=([^;]*)/.exec(line) ?? [];
  if (/; expires=Thu, 01 Jan 1970/i.test(line)) jar.delete(name);
  else jar.set(name, { value, strict: /; samesite=strict/i.test(line) });
};
