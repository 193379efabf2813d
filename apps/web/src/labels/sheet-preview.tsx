import type { LabelStockView } from '@hull-record/contracts';
import { useWords } from '../words/use-words.js';

interface SheetPreviewProps {
  readonly stock: LabelStockView;
  readonly codes: readonly string[];
  readonly skip: number;
}

/** Places that are drawn at most: the pages after say themselves in words. */
const PAGES_DRAWN = 2;

/** The sheets as they will be printed, to scale: where each label comes to stand, and the places that are left out. */
export const SheetPreview = ({ stock, codes, skip }: SheetPreviewProps) => {
  const { t } = useWords();
  const places = stock.columns * stock.rows;
  const pages = Math.ceil((codes.length + skip) / places);
  return (
    <figure className="sheets">
      <figcaption>{t('labels.pages', { pages, count: codes.length })}</figcaption>
      {Array.from({ length: Math.min(pages, PAGES_DRAWN) }, (_, page) => (
        <Sheet key={page} stock={stock} codes={codes} first={page * places - skip} />
      ))}
    </figure>
  );
};

interface SheetProps {
  readonly stock: LabelStockView;
  readonly codes: readonly string[];
  /** Which code stands at the first place; below zero while places are left out. */
  readonly first: number;
}

const Sheet = ({ stock: { page, label, columns, rows, firstMm, pitchMm }, codes, first }: SheetProps) => {
  const places = Array.from({ length: columns * rows }, (_, i) => ({
    i,
    code: codes[first + i],
    x: firstMm.x + (i % columns) * pitchMm.x,
    y: firstMm.y + Math.floor(i / columns) * pitchMm.y,
  }));
  const square = Math.min(label.widthMm, label.heightMm) * 0.55;
  return (
    <svg className="sheet" viewBox={`0 0 ${page.widthMm} ${page.heightMm}`} aria-hidden="true">
      <rect className="sheet-paper" width={page.widthMm} height={page.heightMm} />
      {places.map(({ i, code, x, y }) => (
        <g key={i} transform={`translate(${x} ${y})`}>
          <rect className={code === undefined ? 'place free' : 'place'} width={label.widthMm} height={label.heightMm} />
          {code === undefined ? null : (
            <>
              <rect className="code" x={3} y={(label.heightMm - square) / 2} width={square} height={square} />
              <text
                x={square + 6}
                y={label.heightMm / 2 + 2}
                fontSize={Math.min(6, (1.6 * (label.widthMm - square - 9)) / code.length)}
              >
                {code}
              </text>
            </>
          )}
        </g>
      ))}
    </svg>
  );
};
