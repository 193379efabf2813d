import { facts } from './facts.js';
import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import type { LayerView } from './layer-view.js';
import { para } from './paragraph.js';
import { readingsTables } from './readings-tables.js';
import { heading, stamp, text } from './text-blocks.js';
import { verdictsTable } from './verdicts-table.js';
import { usedTable } from './used-table.js';

/** One layer as recorded: who, when, in what climate, from which lots, with every reading and its signature. */
export const layerSection = (fonts: Fonts, layer: LayerView): readonly Block[] => {
  const made = layer.state === 'made';
  return [
    heading(fonts, `${layer.position}\u00a0 ${layer.name}`, { level: 3, style: 'layer', before: 11 }),
    facts(
      fonts,
      [
        ['Layer', layer.code],
        ['Plies', layer.plies],
        ['State', layer.state],
        ['When', layer.when],
        ['Done by', layer.doneBy.join(', '), 'code'],
        ['Entered by', layer.enteredBy, 'code'],
        ['Climate', layer.climate],
        ['Note', layer.note],
      ],
      0,
    ),
    ...(layer.used.length > 0 ? [usedTable(fonts, layer.used)] : []),
    ...(made && layer.used.length === 0
      ? [text(fonts, [para('No material is recorded for this layer.', 'empty')])]
      : []),
    ...readingsTables(fonts, layer.readings),
    ...verdictsTable(fonts, layer.verdicts),
    ...(made && layer.readings.length === 0
      ? [text(fonts, [para('No readings are recorded for this layer.', 'empty')])]
      : []),
    ...(layer.corrected.length > 0
      ? [
          text(
            fonts,
            layer.corrected.map((note) => para(`Corrected: ${note}`)),
          ),
        ]
      : []),
    ...signed(fonts, layer),
  ];
};

const signed = (fonts: Fonts, { holdPoint, signature }: LayerView): readonly Block[] => {
  if (holdPoint === null && signature === null) return [];
  const name = holdPoint ?? 'Signed';
  return [stamp(fonts, [para(name, 'bold'), para(signature ?? 'not signed')], signature !== null)];
};
