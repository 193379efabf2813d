import { once } from 'node:events';
import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';

/** What a service answered. */
export interface Said {
  readonly status: number;
  readonly said: unknown;
}

/**
 * Asks the service of this very process, past any proxy and certificate: by a server on a loopback port that is opened
 * for the one request.
 */
export const askSelf = async (
  service: RequestListener,
  path: string,
  headers: Readonly<Record<string, string>>,
  body: Buffer,
): Promise<Said> => {
  const server = createServer(service).listen(0, '127.0.0.1');
  await once(server, 'listening');
  try {
    const { port } = server.address() as AddressInfo;
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
      method: 'POST',
      headers: { ...headers, connection: 'close' },
      body: new Uint8Array(body),
    });
    return { status: answer.status, said: await answer.json() };
  } finally {
    server.close();
  }
};
