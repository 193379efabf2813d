import { bookmark } from './bookmark.js';
import type { PartView } from './build-record-view.js';
import { defectsTable, nonconformitiesTable, repairSection } from './defects-section.js';
import { facts, nothing } from './facts.js';
import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { hullMap } from './hull-map.js';
import { laminateSection } from './laminate-section.js';
import { layerSection } from './layer-section.js';
import { verdictsTable } from './verdicts-table.js';
import { hasPhotos, photoDigests, photosOf } from './photos-section.js';
import { readingsTables } from './readings-tables.js';
import { para } from './paragraph.js';
import { heading, text } from './text-blocks.js';

/** The name of a part as headings and bookmarks give it. */
export const partName = ({ kind, number }: PartView): string => `${kind}, part ${number}`;

/** Everything recorded about one part, made block by block so that pages can leave as they are drawn. */
export function* partSection(fonts: Fonts, part: PartView): Generator<Block> {
  const title = (words: string): Block => heading(fonts, words, { level: 2, style: 'section', before: 14 });
  yield heading(fonts, partName(part), {
    level: 1,
    style: 'part',
    before: 22,
    onDraw: ({ doc, y }) => bookmark(doc, partName(part), y),
  });
  yield facts(fonts, [
    ['Mold', part.mold],
    ['Laminate schedule', part.schedule],
    ['Joined', part.joined ?? 'not joined to the hull'],
  ]);
  if (part.readings.length > 0) yield title('Readings of the part');
  yield* readingsTables(fonts, part.readings);
  yield* laminate(fonts, part, title);
  yield* defects(fonts, part, title);
}

function* laminate(fonts: Fonts, { layers }: PartView, title: (words: string) => Block): Generator<Block> {
  yield title('Laminate section, outside in');
  if (layers.length === 0) {
    yield nothing(fonts, 'No layers are scheduled for this part.');
    return;
  }
  yield laminateSection(fonts, layers);
  yield text(fonts, [para('Outside at the top, inside at the bottom. Bands are not to scale.', 'note')], 2);
  yield title('Layers');
  if (layers.every(({ state }) => state === 'to come')) {
    yield nothing(fonts, 'No layer of this part has been made yet.');
  }
  for (const layer of layers) yield* layerSection(fonts, layer);
}

function* defects(fonts: Fonts, part: PartView, title: (words: string) => Block): Generator<Block> {
  yield title('Defects');
  yield part.defects.length === 0
    ? nothing(fonts, 'No defects are recorded for this part.')
    : defectsTable(fonts, part.defects);
  yield* verdictsTable(
    fonts,
    part.defects.flatMap(({ verdicts }) => verdicts),
  );
  if (part.map !== undefined) {
    yield title('Hull map');
    yield* hullMap(fonts, part.map, partName(part));
  }
  if (hasPhotos(part.defects)) {
    yield title('Photos of the defects');
    yield* photosOf(fonts, part.defects);
    yield* photoDigests(fonts, part.defects);
  }
  yield title('Repairs');
  if (part.repairs.length === 0) yield nothing(fonts, 'No repairs are recorded for this part.');
  for (const repair of part.repairs) yield* repairSection(fonts, repair);
  yield title('Nonconformities');
  yield part.nonconformities.length === 0
    ? nothing(fonts, 'No nonconformities are recorded for this part.')
    : nonconformitiesTable(fonts, part.nonconformities);
}
