import { Fold } from '../ui/fold.js';
import { Button } from '../ui/button.js';
import { Table } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import { areaWords } from './area-words.js';
import type { Area } from './area.js';
import type { Cell } from './density.js';

/** So many squares are listed: the table behind the shades. */
const LISTED = 20;

interface FullestSquaresProps {
  readonly cells: readonly Cell[];
  readonly onArea: (area: Area) => void;
}

/** The squares with the most defects as a table; each leads to its list. */
export const FullestSquares = ({ cells, onArea }: FullestSquaresProps) => {
  const words = useWords();
  const { t } = words;
  return (
    <Fold summary={t('manyMap.squares')}>
      <Table
        caption={t('manyMap.squaresCaption', { count: Math.min(LISTED, cells.length), all: cells.length })}
        columns={[
          { head: t('record.place'), cell: ({ area }) => areaWords(area, words), names: true },
          { head: t('record.defects'), cell: ({ count }) => count, class: 'r' },
          { head: t('manyMap.parts'), cell: ({ parts }) => parts, class: 'r' },
          {
            head: t('manyMap.theList'),
            cell: ({ area }) => <Button onPress={() => onArea(area)}>{t('manyMap.list')}</Button>,
          },
        ]}
        rows={cells.slice(0, LISTED)}
      />
    </Fold>
  );
};
