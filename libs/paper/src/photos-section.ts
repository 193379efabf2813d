import type { DefectView } from './build-record-view.js';
import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { para } from './paragraph.js';
import { photoRows } from './photo-rows.js';
import { cell, table } from './table.js';
import { heading, text } from './text-blocks.js';

type Photographed = Pick<DefectView, 'mark' | 'kind' | 'place' | 'layer' | 'photos'>;

const SAYS =
  'Marks are those of the table of defects. Each photo is printed from a copy without metadata, made smaller; the ' +
  'original is kept as it came, and the beginning of its SHA-256 stands under the photo.';

/** Whether there is a photo to print. */
export const hasPhotos = (defects: readonly Photographed[]): boolean => defects.some(({ photos }) => photos.length > 0);

/** Photos under the defect they belong to, in the order of the defects. */
export function* photosOf(fonts: Fonts, defects: readonly Photographed[]): Generator<Block> {
  yield text(fonts, [para(SAYS, 'note')], 2, true);
  for (const { mark, kind, place, layer, photos } of defects) {
    if (photos.length === 0) continue;
    yield heading(fonts, `Defect ${mark}`, { level: 3, style: 'layer', before: 9 });
    yield text(fonts, [para(`${kind}; ${place}; ${layer}`, 'note')], 0, true);
    yield* photoRows(fonts, photos);
  }
}

const COMPARE =
  'SHA-256 (FIPS 180-4) of the originals as they are kept: any program that computes it gives the same digits for the ' +
  'same file, and others for any other.';

/** The whole digest of each photo, to compare a printed one with the one that is kept. */
export const photoDigests = (fonts: Fonts, defects: readonly Photographed[]): readonly Block[] => {
  const photos = defects.flatMap((defect) => defect.photos);
  const columns = [
    { title: 'Photo', share: 0.3 },
    { title: 'SHA-256 of the original', share: 0.7 },
  ];
  return [
    text(fonts, [para(COMPARE, 'note')], 9, true),
    table(
      fonts,
      columns,
      photos.map(({ title, sha256 }) => [cell(title), cell(sha256, 'code-note')]),
    ),
  ];
};
