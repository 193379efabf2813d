import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import type { Box } from './geometry.js';
import { INK, STROKE } from './ink.js';
import { drawLines, heightOf, para, setLines, type SetLine } from './paragraph.js';
import type { PhotoView } from './photo-view.js';
import { CONTENT_WIDTH, MARGIN, type Sheet } from './sheet.js';
import { artifact, mark, open, type Element } from './tags.js';

const GAP = 10;
/** Photos of one defect up to this number stand two in a row, more of them three. */
const LARGE_UP_TO = 4;
const CAPTION_GAP = 3;
const NOTICE_PAD = 8;

const NOTICE = 'This photo cannot be printed: its file is missing or damaged.';

/** A photo with its caption, measured for a column; `size` is that of the picture, points. */
interface SetPhoto {
  readonly photo: PhotoView;
  readonly size: { readonly width: number; readonly height: number };
  readonly caption: readonly SetLine[];
  readonly notice: readonly SetLine[];
}

/** Photos two or three in a row, each above its caption; a row is never broken, and no picture is cut or stretched. */
export const photoRows = (fonts: Fonts, photos: readonly PhotoView[]): readonly Block[] => {
  const across = photos.length <= LARGE_UP_TO ? 2 : 3;
  const column = (CONTENT_WIDTH - (across - 1) * GAP) / across;
  return Array.from({ length: Math.ceil(photos.length / across) }, (_, i) =>
    row(
      photos.slice(i * across, (i + 1) * across).map((photo) => setPhoto(fonts, photo, column)),
      column,
    ),
  );
};

const setPhoto = (fonts: Fonts, photo: PhotoView, column: number): SetPhoto => {
  const said = [para(NOTICE, 'bold'), para(`SHA-256 of the original: ${photo.sha256}`, 'code-note')];
  const notice = setLines(fonts, said, column - 2 * NOTICE_PAD);
  const caption = setLines(
    fonts,
    [
      para(sentence(photo.title), 'bold'),
      para(photo.taken, 'note'),
      para(`SHA-256 ${photo.sha256.slice(0, 16)} …`, 'code-note'),
    ],
    column,
  );
  const size = photo.picture === null ? { width: 0, height: 0 } : fitted(photo.picture, column);
  return { photo, notice, caption, size };
};

/** Within a square as wide as the column, and no larger than a pixel a point: a tiny picture is not blown up. */
const fitted = ({ width, height }: { width: number; height: number }, column: number): SetPhoto['size'] => {
  const scale = Math.min(column / width, column / height, 1);
  return { width: width * scale, height: height * scale };
};

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const row = (photos: readonly SetPhoto[], column: number): Block => {
  // There is room for the notice under any photo: its file may be gone when it is drawn.
  const pictures = Math.max(...photos.map(({ size, notice }) => Math.max(size.height, noticeHeight(notice))));
  const height = pictures + CAPTION_GAP + Math.max(...photos.map(({ caption }) => heightOf(caption)));
  return {
    before: 6,
    lead: height,
    draw: (sheet, parent) => {
      photos.forEach((set, i) => {
        const x = MARGIN + i * (column + GAP);
        drawPhoto(sheet, parent, set, { x, y: sheet.y, width: column, height: pictures });
      });
      sheet.y += height;
    },
  };
};

const noticeHeight = (notice: readonly SetLine[]): number => heightOf(notice) + 2 * NOTICE_PAD;

/** Pictures of a row stand on one line, and their captions begin below it. */
const drawPhoto = (sheet: Sheet, parent: Element, { photo, size, caption, notice }: SetPhoto, cell: Box): void => {
  const { doc, fonts } = sheet;
  const bytes = photo.picture?.read();
  const below = (width: number, height: number): Box => ({
    width,
    height,
    x: cell.x,
    y: cell.y + cell.height - height,
  });
  if (bytes === undefined) drawNotice(sheet, parent, notice, below(cell.width, noticeHeight(notice)));
  else drawPicture(sheet, parent, photo, bytes, below(size.width, size.height));
  const element = open(doc, parent, 'P');
  mark(doc, element, 'P', () =>
    drawLines(doc, fonts, caption, { x: cell.x, y: cell.y + cell.height + CAPTION_GAP, width: cell.width }),
  );
  element.end();
};

const drawPicture = ({ doc }: Sheet, parent: Element, photo: PhotoView, bytes: Uint8Array, box: Box): void => {
  const figure = open(doc, parent, 'Figure', { alt: altOf(photo) });
  // PDFKit takes any Uint8Array; its types know Buffer alone.
  const picture = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  mark(doc, figure, 'Figure', () => doc.image(picture, box.x, box.y, { width: box.width, height: box.height }));
  figure.end();
  artifact(doc, 'Layout', () => frame(doc, box));
};

const altOf = ({ title, taken, sha256 }: PhotoView): string =>
  `${sentence(title)}, ${taken}. SHA-256 of the original: ${sha256}.`;

const drawNotice = ({ doc, fonts }: Sheet, parent: Element, notice: readonly SetLine[], box: Box): void => {
  artifact(doc, 'Layout', () => {
    doc.save().dash(3, { space: 2 });
    frame(doc, box);
    doc.restore();
  });
  const element = open(doc, parent, 'P');
  const at = { x: box.x + NOTICE_PAD, y: box.y + NOTICE_PAD, width: box.width - 2 * NOTICE_PAD };
  mark(doc, element, 'P', () => drawLines(doc, fonts, notice, at));
  element.end();
};

const frame = (doc: PDFKit.PDFDocument, { x, y, width, height }: Box): void => {
  doc.rect(x, y, width, height).lineWidth(STROKE.hair).stroke(INK.ink);
};
