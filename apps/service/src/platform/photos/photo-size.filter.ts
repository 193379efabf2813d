import { type ArgumentsHost, BadRequestException, Catch, PayloadTooLargeException } from '@nestjs/common';
import { ProblemFilter } from '../http/problem.filter.js';
import { InvalidRequest } from '../refusals.js';
import { BYTES_AT_MOST, PhotoTooLarge } from './not-a-photo.js';

/** What a form with a photo may hold. */
export const PHOTO_LIMITS = { limits: { fileSize: BYTES_AT_MOST, files: 1, fields: 4, fieldSize: 64 * 1024 } };
const WHAT_TO_SEND = 'send a form with one field "record", JSON of at most 64 KiB, and one file "photo"';

/** The form is read before any code of ours runs; what is said then of one that is refused says nothing of the remedy. */
@Catch(PayloadTooLargeException, BadRequestException)
export class PhotoSizeFilter extends ProblemFilter {
  override catch(error: PayloadTooLargeException | BadRequestException, host: ArgumentsHost): void {
    if (error instanceof PayloadTooLargeException) return super.catch(new PhotoTooLarge(), host);
    const pointer = /\brecord\b/.test(error.message) ? '/record' : '/photo';
    super.catch(new InvalidRequest([{ pointer, detail: `${error.message}: ${WHAT_TO_SEND}` }]), host);
  }
}
