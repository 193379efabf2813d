import { type ArgumentsHost, Catch, PayloadTooLargeException } from '@nestjs/common';
import { ProblemFilter } from '../http/problem.filter.js';
import { BYTES_AT_MOST, PhotoTooLarge } from './not-a-photo.js';

/** What a form with a photo may hold. */
export const PHOTO_LIMITS = { limits: { fileSize: BYTES_AT_MOST, files: 1, fields: 4, fieldSize: 64 * 1024 } };

/** The form is read before any code of ours runs; what is said of a file that is too large says nothing of the limit. */
@Catch(PayloadTooLargeException)
export class PhotoSizeFilter extends ProblemFilter {
  override catch(_error: unknown, host: ArgumentsHost): void {
    super.catch(new PhotoTooLarge(), host);
  }
}
