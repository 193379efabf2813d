import { once } from 'node:events';
import { type IncomingHttpHeaders, type IncomingMessage, request as askInClear } from 'node:http';
import { request as askOverTls } from 'node:https';
import { createServer } from 'node:net';

/** How something is asked; `body` is sent as JSON, by POST. */
export interface Asked {
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: object;
  /** The authority that is trusted, in PEM form; else those that Node.js comes with. */
  readonly authority?: string;
  /** The address of this machine that the connection comes from. */
  readonly from?: string;
}

export interface Answered {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
}

/** Asks over TLS or in clear, with headers and from an address that `fetch` does not allow to set. */
export const askSecurely = async (url: string, { headers, body, authority, from }: Asked = {}): Promise<Answered> => {
  const ask = url.startsWith('https:') ? askOverTls : askInClear;
  const asked = ask(url, {
    method: body ? 'POST' : 'GET',
    headers: { ...(body ? { 'content-type': 'application/json' } : {}), ...headers },
    ...(authority === undefined ? {} : { ca: authority }),
    ...(from === undefined ? {} : { localAddress: from }),
    agent: false,
  });
  asked.end(body ? JSON.stringify(body) : undefined);
  const [answer] = (await once(asked, 'response')) as [IncomingMessage];
  let text = '';
  for await (const chunk of answer) text += String(chunk);
  return { status: answer.statusCode ?? 0, headers: answer.headers, text };
};

/** A port of this machine that nobody listens on. */
export const freePort = async (): Promise<string> => {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as { port: number };
  server.close();
  await once(server, 'close');
  return String(port);
};
