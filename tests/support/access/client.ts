import { once } from 'node:events';
import { type IncomingMessage, request } from 'node:http';

/** What the service answered: status, JSON (or text when it is none), headers. */
export interface Reply {
  readonly status: number;
  // The tests read into answers freely; their shapes are checked against the contracts elsewhere.
  readonly body: Record<string, never> & { readonly id: string; readonly result: Record<string, never> };
  readonly headers: IncomingMessage['headers'];
}

export type Sent = Readonly<Record<string, string>>;

const COOKIE = /^([^=]+)=([^;]*)/;

/** A browser: keeps the cookies it is given, and sends the CSRF secret of its session back. Any header can be said. */
export class Client {
  private readonly jar = new Map<string, string>();
  csrf: string | null = null;

  /** @param always headers of every request, such as another Host */
  constructor(
    private readonly url: string,
    private readonly always: Sent = {},
  ) {}

  cookie(name: string): string | undefined {
    return this.jar.get(name);
  }

  setCookie(name: string, value: string): void {
    this.jar.set(name, value);
  }

  /** Another browser with the same cookies and the same CSRF secret, as somebody has who copied them. */
  copy(): Client {
    const copy = new Client(this.url, this.always);
    for (const [name, value] of this.jar) copy.setCookie(name, value);
    copy.csrf = this.csrf;
    return copy;
  }

  get(path: string, headers: Sent = {}): Promise<Reply> {
    return this.send('GET', path, undefined, headers);
  }

  post(path: string, body: unknown = {}, headers: Sent = {}): Promise<Reply> {
    return this.send('POST', path, body, headers);
  }

  /** Signs in; gives the answer, whatever it is. */
  signIn(badge: string, secret: string): Promise<Reply> {
    return this.arrive('/api/sign-in', { badge, secret });
  }

  /** Signs in the first time, with a one-time code. */
  firstSignIn(badge: string, code: string, secret: string): Promise<Reply> {
    return this.arrive('/api/first-sign-in', { badge, code, secret });
  }

  private async arrive(path: string, body: unknown): Promise<Reply> {
    const reply = await this.post(path, body);
    if (reply.status === 200) this.csrf = reply.body['csrf'] ?? null;
    return reply;
  }

  private async send(method: string, path: string, body: unknown, headers: Sent): Promise<Reply> {
    const { type, bytes } = await encoded(body);
    const asked = request(`${this.url}${path}`, {
      method,
      headers: { ...this.own(), ...type, ...this.always, ...headers },
    });
    asked.end(bytes);
    const [answer] = (await once(asked, 'response')) as [IncomingMessage];
    const parts: Buffer[] = [];
    for await (const part of answer) parts.push(part as Buffer);
    this.keep(answer.headers['set-cookie'] ?? []);
    return { status: answer.statusCode ?? 0, body: parse(Buffer.concat(parts).toString()), headers: answer.headers };
  }

  private own(): Sent {
    const cookie = [...this.jar].map(([name, value]) => `${name}=${value}`).join('; ');
    return {
      ...(cookie === '' ? {} : { cookie }),
      ...(this.csrf === null ? {} : { 'x-hull-record-csrf': this.csrf }),
    };
  }

  private keep(set: readonly string[]): void {
    for (const line of set) {
      const [, name = '', value = ''] = COOKIE.exec(line) ?? [];
      if (value === '') this.jar.delete(name);
      else this.jar.set(name, value);
    }
  }
}

const encoded = async (body: unknown): Promise<{ type: Sent; bytes: Buffer | undefined }> => {
  if (body === undefined) return { type: {}, bytes: undefined };
  if (!(body instanceof FormData))
    return { type: { 'content-type': 'application/json' }, bytes: Buffer.from(JSON.stringify(body)) };
  const form = new Response(body);
  return {
    type: { 'content-type': form.headers.get('content-type') ?? '' },
    bytes: Buffer.from(await form.arrayBuffer()),
  };
};

const parse = (text: string): Reply['body'] => {
  try {
    return JSON.parse(text) as Reply['body'];
  } catch {
    return text as never;
  }
};
