import type { CertificateView, CheckedCertificate } from '@hull-record/contracts';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { openPaper } from './read-pdf.js';
import type { RunningService } from './service.js';
import type { Shop } from './shop.js';

/** Makes a hull from invented lots, releases it, and gives its number. */
export const releasedHull = async (shop: Shop, number: string): Promise<string> => {
  for (const [lot, material] of [
    ['G', 'GEL-W'],
    ['R', 'RES-VE'],
    ['M', 'MAT-450'],
  ] as const)
    await shop.receive(`${number}-${lot}`, material);
  const lots = { gel: `${number}-G`, resin: { lot: `${number}-R` }, glass: `${number}-M` };
  await shop.wholeHull(number, lots);
  await shop.act(`/api/hulls/${number}/releases`, {});
  return number;
};

/** Issues a certificate and waits for its file. */
export const issued = async (shop: Shop, hull: string): Promise<CertificateView> => {
  const id = await shop.act(`/api/hulls/${hull}/certificates`, {});
  for (let tries = 0; tries < 200; tries += 1) {
    const all = await shop.read<CertificateView[]>(`/api/hulls/${hull}/certificates`);
    const found = all.find((one) => one.id === id);
    if (found?.file) return found;
    await pause(200);
  }
  throw new Error(`The certificate of ${hull} was not made.`);
};

/** The file of a certificate, as the service gives it. */
export const fileOf = async (service: RunningService, { file }: CertificateView): Promise<Buffer> => {
  const answer = await fetch(`${service.url}${file ?? ''}`, { headers: await service.signedIn() });
  if (answer.status !== 200) throw new Error(`${answer.status} ${await answer.text()}`);
  return Buffer.from(await answer.arrayBuffer());
};

/** Asks as anybody may, without signing in. */
export const check = async (
  service: RunningService,
  body: object,
): Promise<{ status: number; body: CheckedCertificate }> => {
  const answer = await fetch(`${service.url}/api/certificate-checks`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
  return { status: answer.status, body: (await answer.json()) as CheckedCertificate };
};

/** Runs a program on files that are written for it; null where it is not installed. */
export const ask = (
  program: string,
  parameters: (folder: string) => string[],
  files: Readonly<Record<string, Buffer>>,
): { readonly status: number | null; readonly out: string } | null => {
  const folder = mkdtempSync(join(tmpdir(), 'hull-record-pdf-'));
  try {
    for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
    const { error, status, stdout, stderr } = spawnSync(program, parameters(folder), { encoding: 'utf8' });
    if ((error as NodeJS.ErrnoException | undefined)?.code === 'ENOENT') return null;
    return { status, out: `${stdout}${stderr}` };
  } finally {
    rmSync(folder, { recursive: true });
  }
};

/** The bytes that the signature of a PDF is over, and the signature (ISO 32000-1, section 12.8.1). */
export const signatureIn = (
  pdf: Buffer,
): { readonly signed: Buffer; readonly cms: Buffer; readonly whole: boolean } => {
  const text = pdf.toString('latin1');
  const range = /\/ByteRange\s*\[\s*(\d+)\s+(\d+)\s+(\d+)\s+(\d+)\s*\]/.exec(text)?.slice(1).map(Number) ?? [];
  const [a = 0, b = 0, c = 0, d = 0] = range;
  const hex = text.slice(a + b + 1, c - 1).replace(/(00)+$/, '');
  const padded = hex.length % 2 === 0 ? hex : `${hex}0`;
  return {
    signed: Buffer.concat([pdf.subarray(a, a + b), pdf.subarray(c, c + d)]),
    cms: Buffer.from(padded, 'hex'),
    whole: a === 0 && c + d === pdf.length && text[a + b] === '<' && text[c - 1] === '>',
  };
};

/** The embedded proof of a certificate. */
export const proofIn = async (pdf: Buffer): Promise<string> => {
  const paper = await openPaper(pdf);
  const attached = (await paper.getAttachments()) as Record<string, { content: Uint8Array }> | null;
  await paper.loadingTask.destroy();
  return Buffer.from(attached?.['certificate-proof.json']?.content ?? []).toString('utf8');
};
