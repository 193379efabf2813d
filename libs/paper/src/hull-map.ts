import { checkSkin, lineOnMap, skinOutline, transomOutline, type GirthLine, type MapPoint } from '@hull-record/trade';
import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { layOutMap, type MapLayout } from './hull-map-layout.js';
import type { HullMapView } from './hull-map-view.js';
import { INK } from './ink.js';
import { drawMark, stateWords } from './map-mark.js';
import { drawLines, heightOf, para, setLines } from './paragraph.js';
import { CONTENT_WIDTH, MARGIN, type Sheet } from './sheet.js';
import { mark, open } from './tags.js';
import { text } from './text-blocks.js';

/** The hull map of a part to scale with its marks, and the sentences that say what it shows and what it leaves out. */
export const hullMap = (fonts: Fonts, view: HullMapView, partName: string): readonly Block[] => {
  const problem = checkSkin(view.skin)[0];
  if (problem !== undefined) {
    const reason = `The map cannot be drawn; marks are listed by place only. ${problem.message}`;
    return [text(fonts, [para(reason, 'empty')])];
  }
  const nameWidth = (name: string): number => fonts.width(fonts.units(name, 'mono-bold'), 'mono-bold', 8);
  const layout = layOutMap(view, CONTENT_WIDTH, nameWidth);
  const caption = captionOf(view, layout);
  const sentences = caption.map((sentence) => para(sentence, 'note'));
  return [
    {
      before: 4,
      lead: layout.height,
      keepWithNext: true,
      draw: drawFigure(view, layout, `${partName}: ${caption[0]}`),
    },
    // What is written below a map is read with it: all of it stays on its page.
    { ...text(fonts, sentences), lead: heightOf(setLines(fonts, sentences, CONTENT_WIDTH)) },
  ];
};

const captionOf = ({ skin, marks, seenFrom }: HullMapView, layout: MapLayout): readonly string[] => {
  const count = marks.length === 0 ? 'No mark' : marks.length === 1 ? '1 mark' : `${marks.length} marks`;
  const { offSkin, unnamed } = layout;
  const beside = skin.transom === undefined ? '' : ', transom beside the stern';
  const chine = skin.stations.some(({ chineGirthMm }) => chineGirthMm !== undefined) ? ' Thin line: chine.' : '';
  const water = skin.stations.some(({ waterlineGirthMm }) => waterlineGirthMm !== undefined)
    ? ' Dash and dot: waterline.'
    : '';
  return [
    `Scale 1:${layout.scale}. ${count}. A girth-by-station expansion of the skin, seen from ${seenFrom}: port half up, starboard half down, keel or centreline the straight middle line${beside}.${chine}${water}`,
    ...(marks.length === 0 ? [] : [stateWords(marks.map(({ state }) => state))]),
    ...(unnamed.length === 0 ? [] : [`Drawn without their names for want of room: ${unnamed.join(', ')}.`]),
    ...(offSkin.length === 0 ? [] : [`Not drawn, their place is not on this skin: ${offSkin.join(', ')}.`]),
  ];
};

const drawFigure =
  (view: HullMapView, layout: MapLayout, alt: string): Block['draw'] =>
  (sheet, parent) => {
    const figure = open(sheet.doc, parent, 'Figure', { alt });
    mark(sheet.doc, figure, 'Figure', () => {
      sheet.doc.save().translate(MARGIN, sheet.y);
      drawSkin(sheet, view, layout);
      for (const spot of layout.labelled) drawMark(sheet, spot);
      sheet.doc.restore();
    });
    figure.end();
    sheet.y += layout.height;
  };

const drawSkin = (sheet: Sheet, { skin }: HullMapView, layout: MapLayout): void => {
  const { doc } = sheet;
  const path = (points: readonly MapPoint[], closed: boolean): void => {
    points.map(layout.toPaper).forEach(({ x, y }, i) => (i === 0 ? doc.moveTo(x, y) : doc.lineTo(x, y)));
    if (closed) doc.closePath();
  };
  doc.lineJoin('round');
  path(skinOutline(skin), true);
  doc.lineWidth(1).stroke(INK.ink);
  if (skin.transom !== undefined) {
    path(transomOutline(skin), true);
    doc.lineWidth(1).stroke(INK.ink);
  }
  const girth = (line: GirthLine): void => {
    for (const side of ['port', 'starboard'] as const) path(lineOnMap(skin, line, side), false);
  };
  girth('chineGirthMm');
  doc.lineWidth(0.5).stroke(INK.ink);
  girth('waterlineGirthMm');
  dashed(doc, [6, 2, 1, 2]);
  path(
    [
      { x: 0, y: 0 },
      { x: skin.lengthMm, y: 0 },
    ],
    false,
  );
  doc.lineWidth(0.5).stroke(INK.soft);
  drawWords(sheet, layout);
};

const dashed = (doc: PDFKit.PDFDocument, pattern: number[]): void => {
  // The types know one number only; PDFKit takes a whole pattern.
  (doc as unknown as { dash: (lengths: number[], options: object) => void }).dash(pattern, {});
  doc.lineWidth(0.6).stroke(INK.mark);
  doc.undash();
};

const drawWords = ({ doc, fonts }: Sheet, { width, height, bowLeft, toPaper }: MapLayout): void => {
  const word = (name: string, x: number, y: number): void => {
    const lines = setLines(fonts, [para(name, 'note')], 100);
    drawLines(doc, fonts, lines, { x: x - (lines[0]?.width ?? 0) / 2, y, width: 100 });
  };
  const keel = toPaper({ x: 0, y: 0 }).y;
  word('port', width / 2, 0);
  word('starboard', width / 2, height - 11);
  word('bow', bowLeft ? 10 : width - 10, keel - 5);
  word('stern', bowLeft ? width - 12 : 12, keel - 5);
};
