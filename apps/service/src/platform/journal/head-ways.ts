import { createHash } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { createTransport } from 'nodemailer';
import type { EvidenceConfig, MailWay } from '../config/evidence-environment.js';
import type { HeadToSend, HeadWay } from './send-heads.js';

/** How long another machine may take to answer, ms. */
const PATIENCE_MS = 15_000;

/** Ways are told apart by where they lead, which may hold a password: so by a digest of it. */
const named = (kind: string, where: string): string =>
  `${kind} ${createHash('sha256').update(where).digest('hex').slice(0, 12)}`;

const fileOf = ({ plant, number }: HeadToSend): string =>
  `head-${plant.replace(/[^A-Za-z0-9-]/g, '_')}-${String(number).padStart(8, '0')}.txt`;

/** A file a head, in a folder on a file share; never written over one that is there. */
export const byFolder = (folder: string): HeadWay => ({
  name: named('folder', folder),
  send: async (head) => {
    await mkdir(folder, { recursive: true });
    await writeFile(join(folder, fileOf(head)), `${head.line}\n`, { flag: 'wx' }).catch((error: unknown) => {
      // It arrived before, and nothing was heard of it.
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    });
  },
});

/** The line as the body of a POST; any answer of success is taken for its receipt. */
export const byWebhook = (url: string): HeadWay => ({
  name: named('webhook', url),
  send: async ({ line }) => {
    const answer = await fetch(url, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: line,
      redirect: 'error',
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    if (!answer.ok) throw new Error(`The webhook answered ${answer.status}.`);
  },
});

/** A mail a head, with the head as an attached file. */
export const byMail = ({ smtpUrl, from, to }: MailWay): HeadWay => {
  const transport = createTransport(smtpUrl, { from });
  return {
    name: named('mail', `${smtpUrl} ${to}`),
    send: async (head) => {
      await transport.sendMail({
        to,
        subject: `Hull Record: head ${head.number} of the journal of plant ${head.plant}`,
        text: `Keep the attached file. With it anybody can tell whether the journal of plant ${head.plant} is unchanged since it was sent:\n\n  npm run verify -- --head ${fileOf(head)}\n`,
        attachments: [{ filename: fileOf(head), content: `${head.line}\n`, contentType: 'text/plain' }],
      });
    },
  };
};

/** The ways that the configuration asks for. */
export const headWaysOf = ({ folder, webhook, mail }: EvidenceConfig): readonly HeadWay[] => [
  ...(folder === null ? [] : [byFolder(folder)]),
  ...(webhook === null ? [] : [byWebhook(webhook)]),
  ...(mail === null ? [] : [byMail(mail)]),
];
