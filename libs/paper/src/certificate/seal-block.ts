import bwipp from 'bwip-js/generic';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { INK } from '../ink.js';
import { runsOf } from '../labels/data-matrix.js';
import { drawLines, heightOf, para, setLines } from '../paragraph.js';
import { CONTENT_WIDTH, MARGIN, rule, type Sheet } from '../sheet.js';
import { artifact, mark, open } from '../tags.js';
import { askAt, WORDS } from './certificate-words.js';
import type { CertificateSeal, CertificateView } from './certificate-view.js';

/** Side of the QR code, points: some 30 mm, to be scanned from a hand's distance. */
const SIDE = 86;
const GAP = 14;
/** Empty modules around a QR code (ISO/IEC 18004, from memory). */
const QUIET = 4;

/** The QR code and the words beside it, at the foot of a certificate; the proof goes along as an embedded file. */
export const sealBlock = (fonts: Fonts, view: CertificateView, seal: CertificateSeal, created: Date): Block => {
  const width = CONTENT_WIDTH - SIDE - GAP;
  const lines = setLines(
    fonts,
    [
      para(WORDS.question, 'section'),
      para(`${askAt(view)} ${seal.page}`),
      para(seal.code, 'code-bold'),
      para(WORDS.answer, 'note'),
      para(WORDS.proof, 'note'),
    ],
    width,
  );
  return {
    before: 10,
    lead: Math.max(SIDE, heightOf(lines)) + 6,
    draw: (sheet, parent) => {
      const { doc, y } = sheet;
      artifact(doc, 'Layout', () => rule(doc, y));
      const figure = open(doc, parent, 'Figure', { alt: `QR code: ${seal.page}` });
      mark(doc, figure, 'Figure', () => drawCode(sheet, seal.address, y + 6));
      figure.end();
      const words = open(doc, parent, 'P');
      mark(doc, words, 'P', () => drawLines(doc, fonts, lines, { x: MARGIN + SIDE + GAP, y: y + 6, width }));
      words.end();
      const { name, content, about } = seal.attached;
      const facts = {
        name,
        description: about,
        type: 'application/json',
        creationDate: created,
        modifiedDate: created,
      };
      doc.file(content, facts as never);
      sheet.y += Math.max(SIDE, heightOf(lines)) + 6;
    },
  };
};

const drawCode = ({ doc }: Sheet, address: string, top: number): void => {
  const [symbol] = bwipp.raw({ bcid: 'qrcode', text: address, eclevel: 'M' } as never);
  if (symbol === undefined || !('pixs' in symbol)) throw new Error('The encoder gave no QR code.');
  const { pixs, pixx } = symbol;
  const module = SIDE / (pixx + 2 * QUIET);
  for (let row = 0; row * pixx < pixs.length; row += 1)
    for (const { from, length } of runsOf(pixs.slice(row * pixx, (row + 1) * pixx), row))
      doc.rect(MARGIN + (QUIET + from) * module, top + (QUIET + row) * module, length * module, module);
  doc.fill(INK.ink);
};
