import type { PhotoView } from '@hull-record/paper';
import type { PrintCopy } from '../platform/photos/print-copies.js';
import type { DefectRow } from '../platform/views/faults.js';
import type { PlantTime } from '../platform/papers/plant-time.js';

/** Print copies by the SHA-256 of the copy that is shown; a photo that has none prints as a notice. */
export type Pictures = ReadonlyMap<string, PrintCopy>;

/** Photos of a defect as the papers print them, in the order in which they were added. */
export const wordPhotos = ({ mark, photos }: DefectRow, time: PlantTime, pictures: Pictures): readonly PhotoView[] =>
  photos.map(({ originalSha256, shownSha256, redactedOn, at, by }, i) => ({
    title: `photo ${i + 1} of defect ${mark}${redactedOn === null ? '' : `, redacted on ${redactedOn}`}`,
    taken: `taken ${time.at(new Date(at))}, by ${by}`,
    sha256: originalSha256,
    picture: pictures.get(shownSha256) ?? null,
  }));

/** The photos of some defects, whose print copies are wanted. */
export const photosIn = (defects: readonly DefectRow[]): readonly DefectRow['photos'][number][] =>
  defects.flatMap(({ photos }) => photos);
