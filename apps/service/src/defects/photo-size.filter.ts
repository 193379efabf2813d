import { type ArgumentsHost, Catch, PayloadTooLargeException } from '@nestjs/common';
import { ProblemFilter } from '../platform/http/problem.filter.js';
import { PhotoTooLarge } from '../platform/photos/not-a-photo.js';

/** The form is read before any code of ours runs; what is said of a file that is too large says nothing of the limit. */
@Catch(PayloadTooLargeException)
export class PhotoSizeFilter extends ProblemFilter {
  override catch(_error: unknown, host: ArgumentsHost): void {
    super.catch(new PhotoTooLarge(), host);
  }
}
