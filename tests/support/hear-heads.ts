import { once } from 'node:events';
import { createServer as createHttp } from 'node:http';
import { createServer, type AddressInfo } from 'node:net';

/** Something on loopback that hears what is sent to it. */
interface Hearing {
  readonly url: string;
  readonly heard: readonly string[];
  close(): Promise<void>;
}

/** Hears POSTs, and answers with a status that can be set. */
export const hearPosts = async (): Promise<Hearing & { answer(status: number): void }> => {
  const heard: string[] = [];
  let status = 204;
  const server = createHttp((request, response) => {
    let body = '';
    request.on('data', (data: Buffer) => (body += data.toString()));
    request.on('end', () => {
      heard.push(body);
      response.writeHead(status).end();
    });
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}/heads`,
    heard,
    answer: (next) => (status = next),
    close: async () => {
      server.closeAllConnections();
      server.close();
      await once(server, 'close');
    },
  };
};

const ANSWERS: readonly (readonly [RegExp, string])[] = [
  [/^EHLO/i, '250 mail.example'],
  [/^(MAIL|RCPT|RSET|NOOP)/i, '250 OK'],
  [/^QUIT/i, '221 bye'],
];

/** Hears mail by SMTP (RFC 5321): as much of it as sending takes. */
export const hearMail = async (): Promise<Hearing> => {
  const heard: string[] = [];
  const server = createServer((socket) => {
    let [text, mail] = ['', false];
    socket.on('error', () => undefined);
    socket.write('220 mail.example\r\n');
    socket.on('data', (data) => {
      text += data.toString('utf8');
      for (;;) {
        const end = text.indexOf(mail ? '\r\n.\r\n' : '\r\n');
        if (end < 0) return;
        const said = text.slice(0, end);
        text = text.slice(end + (mail ? 5 : 2));
        if (mail) heard.push(said);
        const starts = !mail && /^DATA/i.test(said);
        const known = ANSWERS.find(([pattern]) => pattern.test(said))?.[1] ?? '250 OK';
        socket.write(`${starts ? '354 go on' : known}\r\n`);
        mail = starts;
      }
    });
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  return {
    url: `smtp://127.0.0.1:${port}`,
    heard,
    close: async () => {
      server.close();
      await once(server, 'close');
    },
  };
};
