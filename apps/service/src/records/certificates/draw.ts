import type { CertificateContent } from '@hull-record/contracts';
import { drawCertificate } from '@hull-record/paper';
import { buffer } from 'node:stream/consumers';
import { grouped } from './code.js';

/** Name of the embedded file. */
export const PROOF_NAME = 'certificate-proof.json';

/** Where the page is at which anybody can ask about a certificate. */
export class CertificatePage {
  /** @param base address of the service as browsers reach it, without a slash at its end */
  constructor(readonly base: string) {}

  get address(): string {
    return `${this.base}/c`;
  }
}

/** Draws a certificate with its proof in it, not signed yet. The code stands behind a #: it is not sent to be logged. */
export const draw = (
  content: CertificateContent,
  page: CertificatePage,
  code: string,
  proof: Buffer,
  created: Date,
): Promise<Buffer> =>
  buffer(
    drawCertificate(
      content,
      {
        address: `${page.address}#${code}`,
        page: page.address,
        code: grouped(code),
        attached: { name: PROOF_NAME, content: proof, about: 'What this certificate prints, with its proof.' },
      },
      created,
    ),
  );

/** How many pages a PDF of ours has. */
export const pagesOf = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type \/Page\b/g) ?? []).length;
