import { StreamableFile } from '@nestjs/common';
import type { Readable } from 'node:stream';

/** A paper as an answer, shown in the browser and named after what it is about. */
export const pdfAnswer = (pdf: Readable, name: string, about: string): StreamableFile =>
  new StreamableFile(pdf, {
    type: 'application/pdf',
    disposition: `inline; filename="${name}-${about.replace(/[^A-Za-z0-9._-]+/g, '_')}.pdf"`,
  });
