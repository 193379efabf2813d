import { Injectable } from '@nestjs/common';
import sharp from 'sharp';
import { fewAtOnce } from '../few-at-once.js';
import { KeptCopies } from './kept-copies.js';
import type { PhotoStore } from './photo-store.js';
import { preparePhoto } from './prepare-photo.js';

/** Longest side of a print copy, px: 230 dots per inch where two photos stand in a row on A4. Our choice. */
const PRINT_SIDE = 800;
/** Quality of the JPEG: a photo of a laminate stays under 200 kB, also where every pixel differs. Our choice. */
const PRINT_QUALITY = 75;

/** Copies of another release may differ in a byte, so that each release keeps its own. */
const RECIPE = `${PRINT_SIDE}-${PRINT_QUALITY}-${sharp.versions.sharp ?? ''}-${sharp.versions.vips}`;

/** A photo by the SHA-256 of its original and of the copy that is shown; a redacted copy is not made anew. */
export interface PhotoFiles {
  readonly originalSha256: string;
  readonly shownSha256: string;
  readonly redactedOn: string | null;
}

/** A small upright JPEG without any metadata; width and height in px. */
export interface PrintCopy {
  readonly width: number;
  readonly height: number;
  /** Reads it from the disk; undefined when it is no longer there. Hundreds of them need not be held at once. */
  readonly read: () => Uint8Array | undefined;
}

/**
 * Makes what is printed of photos, a few at a time and off the event loop, and keeps it until the next release.
 *
 * The same photo gives the same bytes on the same versions of sharp and libvips: a copy is always made of the one that
 * is shown, and where that is damaged of the same made anew from the original.
 */
@Injectable()
export class PrintCopies {
  private readonly kept: KeptCopies;
  private readonly inTurn = fewAtOnce(2);

  /** @param folder of its own; what is in it can be made again */
  constructor(
    private readonly store: PhotoStore,
    folder: string,
  ) {
    this.kept = new KeptCopies(folder);
  }

  /** Print copies by the SHA-256 of the copy that is shown; a photo whose files are missing or damaged has none. Never throws. */
  async of(photos: readonly PhotoFiles[]): Promise<ReadonlyMap<string, PrintCopy>> {
    const each = new Map(photos.map((photo) => [photo.shownSha256, photo]));
    const copies = new Map<string, PrintCopy>();
    await Promise.all(
      [...each].map(([shown, photo]) =>
        this.inTurn(async () => {
          const copy = await this.copyOf(photo).catch(() => undefined);
          if (copy) copies.set(shown, copy);
        }),
      ),
    );
    return copies;
  }

  /** Forgets the print copies of a file, of every release. */
  async forget(sha256: string): Promise<void> {
    await this.kept.forget(sha256);
  }

  private async copyOf(photo: PhotoFiles): Promise<PrintCopy | undefined> {
    const name = `${photo.shownSha256}-${RECIPE}`;
    const before = await this.kept.read(name);
    if (before) return { ...(await sizeOf(before)), read: () => this.kept.readNow(name) };
    const shown = await this.shownOf(photo);
    if (!shown) return undefined;
    const made = await smaller(shown);
    const isKept = await this.kept.keep(name, made).then(
      () => true,
      () => false,
    );
    return { ...(await sizeOf(made)), read: () => (isKept ? this.kept.readNow(name) : made) };
  }

  private async shownOf({ originalSha256, shownSha256, redactedOn }: PhotoFiles): Promise<Buffer | undefined> {
    const shown = await this.store.read(shownSha256);
    if (shown || redactedOn !== null) return shown;
    const original = await this.store.read(originalSha256);
    return original && (await preparePhoto(original)).shown;
  }
}

const smaller = (shown: Buffer): Promise<Buffer> =>
  sharp(shown, { failOn: 'error' })
    .resize(PRINT_SIDE, PRINT_SIDE, { fit: 'inside', withoutEnlargement: true })
    .jpeg({ quality: PRINT_QUALITY })
    .toBuffer();

const sizeOf = async (jpeg: Buffer): Promise<{ width: number; height: number }> => {
  const { width, height } = await sharp(jpeg).metadata();
  return { width, height };
};
