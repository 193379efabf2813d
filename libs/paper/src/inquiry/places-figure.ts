import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import type { Box } from '../geometry.js';
import { INK, STROKE } from '../ink.js';
import { drawLines, heightOf, para, setLines } from '../paragraph.js';
import { tableOf } from '../papers/sections.js';
import { CONTENT_WIDTH, MARGIN, type Sheet } from '../sheet.js';
import { cell, table } from '../table.js';
import { mark, open } from '../tags.js';
import { text } from '../text-blocks.js';
import type { PlacesView, ZoneView } from './places-view.js';

const WIDTH = 420;
const HALF = 62;
const WORDS = 12;

/** Places of claims on the skin unrolled, with zones; then zones in figures. */
export const placesBlocks = (fonts: Fonts, view: PlacesView): readonly Block[] => [
  text(fonts, [para(view.says)], 2),
  figure(fonts, view),
  caption(fonts),
  ...(view.cluster === null ? [] : [text(fonts, [para(view.cluster)])]),
  ...tableOf(
    view.zones.filter(({ hulls }) => hulls > 0),
    (zones) =>
      table(
        fonts,
        [
          { title: 'Zone', share: 0.5 },
          { title: 'Hulls affected', share: 0.2 },
          { title: 'Over an even spread', share: 0.3 },
        ],
        zones.map(({ name, hulls, perArea, inCluster }) => [
          cell(inCluster ? `${name} (in the group that stands out most)` : name),
          cell(String(hulls), 'code'),
          cell(perArea, 'code'),
        ]),
      ),
  ),
  text(fonts, [para(view.cannotSay, 'note')]),
];

/** What is written below a picture is read with it: all of it stays on its page. */
const caption = (fonts: Fonts): Block => {
  const words = [
    'Stern left, bow right, port up: the skin unrolled, each model to its own length and girth; the middle line is the keel or centreline.',
    'Ring: a place of a claim. Number: hulls affected in the zone, however many spots each has. Slanted lines in a bold frame: the group that stands out most.',
  ].map((each) => para(each, 'note'));
  return { ...text(fonts, words), lead: heightOf(setLines(fonts, words, CONTENT_WIDTH)) };
};

const figure = (fonts: Fonts, view: PlacesView): Block => ({
  ...{ before: 5, lead: 2 * (HALF + WORDS), keepWithNext: true },
  draw: (sheet, parent) => {
    const { doc } = sheet;
    const element = open(doc, parent, 'Figure', { alt: altOf(view) });
    mark(doc, element, 'Figure', () => drawPlaces(sheet, fonts, view));
    element.end();
    sheet.y += 2 * (HALF + WORDS);
  },
});

const altOf = ({ spots, zones }: PlacesView): string => {
  const affected = zones.filter(({ hulls }) => hulls > 0).map(({ name, hulls }) => `${name}: ${hulls}`);
  return `Skin unrolled with ${spots.length} places of claims. Hulls affected in each zone: ${affected.join('; ')}.`;
};

const drawPlaces = ({ doc, y: top }: Sheet, fonts: Fonts, { spots, zones }: PlacesView): void => {
  const left = MARGIN + (CONTENT_WIDTH - WIDTH) / 2;
  const middle = top + WORDS + HALF;
  const at = (x: number, y: number) => ({ x: left + x * WIDTH, y: middle - y * HALF });
  const boxOf = ({ from, to }: ZoneView): Box => {
    const [a, b] = [at(from.x, to.y), at(to.x, from.y)];
    return { x: a.x, y: a.y, width: b.x - a.x, height: b.y - a.y };
  };
  for (const zone of zones.filter(({ inCluster }) => inCluster)) slanted(doc, boxOf(zone));
  for (const zone of zones) frame(doc, boxOf(zone), STROKE.hair);
  for (const zone of zones.filter(({ inCluster }) => inCluster)) frame(doc, boxOf(zone), STROKE.bold);
  doc
    .moveTo(left, middle)
    .lineTo(left + WIDTH, middle)
    .lineWidth(STROKE.line)
    .stroke(INK.ink);
  for (const spot of spots) {
    const { x, y } = at(spot.x, spot.y);
    doc.circle(x, y, 2.2).lineWidth(STROKE.line).stroke(INK.ink);
  }
  const word = (name: string, x: number, y: number): void =>
    drawLines(doc, fonts, setLines(fonts, [para(name, 'note')], 60), { x, y, width: 60 });
  for (const zone of zones.filter(({ hulls }) => hulls > 0)) {
    const { x, y } = boxOf(zone);
    doc.rect(x + 1.5, y + 1, 6 + 4.6 * (String(zone.hulls).length - 1), 10).fill(INK.white);
    word(String(zone.hulls), x + 2.5, y + 0.5);
  }
  word('port', left + WIDTH / 2 - 8, top);
  word('starboard', left + WIDTH / 2 - 18, middle + HALF + 1);
  word('stern', left - 26, middle - 5);
  word('bow', left + WIDTH + 6, middle - 5);
};

const frame = (doc: PDFKit.PDFDocument, { x, y, width, height }: Box, line: number): void => {
  doc.rect(x, y, width, height).lineWidth(line).stroke(INK.soft);
};

const slanted = (doc: PDFKit.PDFDocument, { x, y, width, height }: Box): void => {
  doc.save().rect(x, y, width, height).clip();
  for (let from = x - height; from < x + width; from += 5) doc.moveTo(from, y + height).lineTo(from + height, y);
  doc.lineWidth(STROKE.hair).stroke(INK.soft).restore();
};
