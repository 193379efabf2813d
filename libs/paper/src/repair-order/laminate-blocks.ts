import { facts } from '../facts.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { laminateSection } from '../laminate-section.js';
import type { LayerView } from '../layer-view.js';
import { listed, subHeading } from '../papers/sections.js';
import { para } from '../paragraph.js';
import { text } from '../text-blocks.js';
import { usedTable } from '../used-table.js';

const SAYS =
  'Outside at the top, inside at the bottom; bands are not to scale. A layer that names a zone is there only where the ' +
  'defect lies in that zone: check against the part.';

/** The laminate that is ground out and replaced: as a section, then each layer with its plies and lots. */
export const laminateBlocks = (fonts: Fonts, layers: readonly LayerView[]): readonly Block[] =>
  listed(
    fonts,
    'Laminate that a patch replaces',
    layers.length === 0
      ? []
      : [
          laminateSection(fonts, layers),
          text(fonts, [para(SAYS, 'note')], 2),
          ...layers.filter(({ state }) => state === 'made').flatMap((layer) => made(fonts, layer)),
        ],
    'No layers are scheduled for this part.',
  );

const made = (fonts: Fonts, layer: LayerView): readonly Block[] => [
  subHeading(fonts, `${layer.position}\u00a0 ${layer.name}`),
  facts(
    fonts,
    [
      ['Layer', layer.code],
      ['Plies', layer.plies],
      ['Made', layer.when],
    ],
    0,
  ),
  layer.used.length > 0
    ? usedTable(fonts, layer.used)
    : text(fonts, [para('No material is recorded for this layer.', 'empty')]),
];
