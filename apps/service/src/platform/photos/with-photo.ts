import { applyDecorators, UseFilters, UseInterceptors } from '@nestjs/common';
import { FileInterceptor } from '@nestjs/platform-express';
import { TakesPhoto } from '../http/route.js';
import { PHOTO_LIMITS, PhotoSizeFilter } from './photo-size.filter.js';

/** A route that takes one photo with its record, as a form; `schema` names the record in the OpenAPI document. */
export const WithPhoto = (schema: string): MethodDecorator =>
  applyDecorators(
    TakesPhoto(schema),
    UseFilters(PhotoSizeFilter),
    UseInterceptors(FileInterceptor('photo', PHOTO_LIMITS)),
  );

/** The file of a form. */
export interface PhotoFile {
  readonly buffer: Buffer;
}
