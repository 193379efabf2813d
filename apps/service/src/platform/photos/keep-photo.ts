import { AddPhoto } from '@hull-record/contracts';
import type { z } from 'zod';
import { refusalOf, wholly } from '../http/validation.js';
import { sha256 } from '../ids.js';
import { InvalidRequest } from '../refusals.js';
import type { PhotoStore } from './photo-store.js';
import { preparePhoto } from './prepare-photo.js';

/** What the service answers of a photo that it added. */
export interface AddedPhoto {
  readonly originalSha256: string;
  readonly width: number;
  readonly height: number;
}

/** A photo whose files are kept, as its fact tells of it. */
export interface KeptPhoto extends AddedPhoto {
  readonly originalType: string;
  readonly originalBytes: number;
  readonly shownSha256: string;
}

/**
 * Keeps the files of a photo: the original as it came, and a copy without metadata. Both are on disk before any fact
 * is recorded: what is acknowledged is kept.
 *
 * @throws InvalidRequest when no photo is attached; what `preparePhoto` throws of a file that is none
 */
export const keepPhoto = async (store: PhotoStore, original: Buffer | undefined): Promise<KeptPhoto> => {
  if (!original) throw new InvalidRequest([{ pointer: '/photo', detail: 'attach the photo as the file "photo"' }]);
  const { shown, width, height, type } = await preparePhoto(original);
  await store.keep(original);
  await store.keep(shown);
  return {
    ...{ originalSha256: sha256(original), originalType: type, originalBytes: original.length },
    ...{ shownSha256: sha256(shown), width, height },
  };
};

/**
 * Reads the record that comes beside a photo, as the field "record" of the form.
 *
 * @throws InvalidRequest
 */
export const recordOfForm = <S extends z.ZodType>(schema: S, field: string | undefined): z.output<S> => {
  let json: unknown;
  try {
    json = JSON.parse(field ?? '');
  } catch {
    throw new InvalidRequest([
      { pointer: '/record', detail: 'is not JSON: send the record as the form field "record"' },
    ]);
  }
  const parsed = schema.safeParse(json);
  if (!parsed.success) throw refusalOf(parsed.error.issues);
  return wholly(json, parsed.data);
};

/** The record of a photo that needs nothing more. */
export const readPhotoRecord = (field: string | undefined): AddPhoto => recordOfForm(AddPhoto, field);
