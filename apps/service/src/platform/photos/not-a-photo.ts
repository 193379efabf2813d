import { Refusal } from '../refusals.js';

/** A decoded photo may have this many megapixels: a small file can claim to be a very large picture. */
export const MEGAPIXELS_AT_MOST = 80;

/** A file may have this many bytes. */
export const BYTES_AT_MOST = 30 * 1024 * 1024;

/** What was sent as a photo is none that is taken; it names what to send instead. */
export class NotAPhoto extends Refusal {
  readonly code = 'not-a-photo';
  readonly reason = 'unsupported';
  override readonly errors: readonly { readonly pointer: string; readonly detail: string }[];
  constructor(
    message: string,
    detail: string,
    override readonly data: Readonly<Record<string, unknown>> = {},
  ) {
    super(message);
    this.errors = [{ pointer: '/photo', detail }];
  }
}

/** The content is of another kind. */
export const anotherKind = (): NotAPhoto =>
  new NotAPhoto(
    'The file is not a JPEG, PNG or WebP picture.',
    'send a JPEG, PNG or WebP picture: its content counts, whatever its name says',
  );

/** The content begins as a photo, and is damaged or ends too soon. */
export const broken = (format: string): NotAPhoto =>
  new NotAPhoto(
    `The ${format} is cut off or damaged: not all of the picture can be read.`,
    'is cut off or damaged: send the whole file again from the device that took it',
  );

/** The picture says of itself that it is larger than is taken. */
export const tooManyPixels = (width: number, height: number): NotAPhoto => {
  const megapixels = Math.ceil((width * height) / 1e6);
  return new NotAPhoto(
    `The picture is ${width} × ${height} pixels; a photo may have at most ${MEGAPIXELS_AT_MOST} megapixels.`,
    `is ${width} × ${height} pixels, ${megapixels} megapixels, and at most ${MEGAPIXELS_AT_MOST} are taken: send a copy with fewer pixels`,
    { width, height, megapixelsAtMost: MEGAPIXELS_AT_MOST },
  );
};

/** The file has more bytes than are taken. */
export class PhotoTooLarge extends Refusal {
  readonly code = 'too-large';
  readonly reason = 'too large';
  override readonly data = { bytesAtMost: BYTES_AT_MOST };
  override readonly errors = [
    {
      pointer: '/photo',
      detail: `is larger than ${BYTES_AT_MOST / 1024 / 1024} MB (${BYTES_AT_MOST} bytes): send a copy with fewer pixels, or saved with more compression`,
    },
  ];
  constructor() {
    super(`A photo may have at most ${BYTES_AT_MOST / 1024 / 1024} MB.`);
  }
}
