/** Width and height in mm, as a page lies when it is printed. */
export interface StockSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A stock of labels: how large a page is, and where the places for labels are on it. */
export interface LabelStock {
  /** The page that is printed at once: a sheet, or one label of a roll. */
  readonly page: StockSize;
  readonly label: StockSize;
  readonly columns: number;
  readonly rows: number;
  /** Left and top edge of the first label on the page, mm. */
  readonly firstMm: { readonly x: number; readonly y: number };
  /** From one label to the next, edge to edge, mm. */
  readonly pitchMm: { readonly x: number; readonly y: number };
  /** Nothing is printed nearer to the edge of a label than this, mm: cuts wander, and printers leave an edge of sheets. */
  readonly insetMm: number;
}

const roll = (widthMm: number, heightMm: number, insetMm: number): LabelStock => ({
  page: { widthMm, heightMm },
  label: { widthMm, heightMm },
  columns: 1,
  rows: 1,
  firstMm: { x: 0, y: 0 },
  pitchMm: { x: widthMm, y: heightMm },
  insetMm,
});

const A4: StockSize = { widthMm: 210, heightMm: 297 };
const LETTER: StockSize = { widthMm: 215.9, heightMm: 279.4 };

/** Label stock that is sold widely, by size. Sizes, margins and pitches: common practice, from memory; measure your own. */
export const LABEL_STOCK = {
  'roll-62x29': roll(62, 29, 2),
  'roll-100x50': roll(100, 50, 3),
  'roll-100x150': roll(100, 150, 4),
  'a4-70x37': {
    page: A4,
    label: { widthMm: 70, heightMm: 37 },
    ...{ columns: 3, rows: 8, firstMm: { x: 0, y: 0.5 }, pitchMm: { x: 70, y: 37 }, insetMm: 5 },
  },
  'a4-105x74': {
    page: A4,
    label: { widthMm: 105, heightMm: 74 },
    ...{ columns: 2, rows: 4, firstMm: { x: 0, y: 0.5 }, pitchMm: { x: 105, y: 74 }, insetMm: 5 },
  },
  'letter-67x25': {
    page: LETTER,
    label: { widthMm: 66.7, heightMm: 25.4 },
    ...{ columns: 3, rows: 10, firstMm: { x: 4.75, y: 12.7 }, pitchMm: { x: 69.85, y: 25.4 }, insetMm: 1.5 },
  },
} as const satisfies Readonly<Record<string, LabelStock>>;

/** The name of a label stock. */
export type LabelStockName = keyof typeof LABEL_STOCK;

/** The names of every label stock, the table's own order. */
export const LABEL_STOCK_NAMES = Object.keys(LABEL_STOCK) as [LabelStockName, ...LabelStockName[]];

/** How many labels one page of a stock has. */
export const placesOf = ({ columns, rows }: LabelStock): number => columns * rows;
