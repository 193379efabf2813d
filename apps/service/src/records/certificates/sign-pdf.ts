import { plainAddPlaceholder } from '@signpdf/placeholder-plain';
import { SignPdf } from '@signpdf/signpdf';
import type { Signer } from './signing-key.js';

/** Room for the signature with its certificate, bytes. */
const ROOM = 8_192;

/** Signs a finished PDF from its first byte to its last (PKCS #7 detached, SHA-256 with RSA or ECDSA). */
export const signPdf = (pdf: Buffer, signer: Signer, plant: string, at: Date): Promise<Buffer> => {
  const prepared = plainAddPlaceholder({
    pdfBuffer: pdf,
    reason: 'States what the builder recorded for this hull.',
    contactInfo: '',
    name: `Hull Record, plant ${plant}`,
    location: '',
    signingTime: at,
    signatureLength: ROOM,
    // A name of PDF: without a space.
    appName: 'HullRecord',
  });
  return new SignPdf().sign(pointed(prepared), signer.pdf, at);
};

const NEWLINE = 0x0a;

/** The library points at the line end before the table of what it added; readers forgive that, checkers warn. */
const pointed = (pdf: Buffer): Buffer => {
  const text = pdf.toString('latin1');
  const at = Number(/startxref\n(\d+)\n%%EOF\s*$/.exec(text)?.[1]);
  if (pdf[at] !== NEWLINE || text.slice(at + 1, at + 5) !== 'xref') return pdf;
  return Buffer.from(text.replace(/startxref\n\d+\n%%EOF\s*$/, `startxref\n${at + 1}\n%%EOF\n`), 'latin1');
};
