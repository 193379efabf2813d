import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { fillWithHatch } from './hatch.js';
import { INK, STROKE } from './ink.js';
import type { LayerView } from './layer-view.js';
import { para } from './paragraph.js';
import { table, type Cell } from './table.js';
import type { Box } from './geometry.js';

/**
 * The laminate of a part drawn as a section, outside in: one hatched band for each layer, with its words beside it.
 *
 * Bands are as high as their words, not to scale. A layer to come is pale with a dashed edge.
 */
export const laminateSection = (fonts: Fonts, layers: readonly LayerView[]): Block =>
  table(
    fonts,
    [
      { title: 'outside', share: 0.24 },
      { title: 'Layer', share: 0.46 },
      { title: 'State', share: 0.3 },
    ],
    layers.map(band),
    { before: 2, leastRowHeight: 26, firstRows: 3 },
  );

const band = (layer: LayerView): readonly Cell[] => {
  const made = layer.state === 'made';
  return [
    {
      paragraphs: [],
      alt: `Band of layer ${layer.position}, ${layer.name}: hatch of ${layer.hatch}, ${layer.state}.`,
      paint: (doc, box) => drawBand(doc, layer, box),
    },
    { paragraphs: [para(`${layer.position}\u00a0 ${layer.name}`, made ? 'bold' : 'body'), para(layer.plies, 'note')] },
    { paragraphs: [para(made ? 'made' : 'to come', made ? 'bold' : 'body'), ...holdPoint(layer)] },
  ];
};

const holdPoint = ({ holdPoint: name, signature }: LayerView) =>
  name === null ? [] : [para(`${name}: ${signature === null ? 'not signed' : 'signed'}`, 'note')];

const drawBand = (doc: PDFKit.PDFDocument, layer: LayerView, box: Box): void => {
  const made = layer.state === 'made';
  const inner = { ...box, width: box.width - 18 };
  fillWithHatch(doc, layer.hatch, inner, made);
  doc.save().lineWidth(STROKE.line);
  if (!made) doc.dash(3, { space: 2 });
  doc.rect(inner.x, inner.y, inner.width, inner.height).stroke(made ? INK.ink : INK.soft);
  doc.undash().lineWidth(STROKE.hair);
  const middle = Math.min(box.y + 10, box.y + box.height / 2);
  doc
    .moveTo(inner.x + inner.width + 3, middle)
    .lineTo(box.x + box.width - 2, middle)
    .stroke(INK.soft);
  doc.restore();
};
