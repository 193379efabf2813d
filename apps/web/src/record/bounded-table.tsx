import { useState } from 'react';
import { Button } from '../ui/button.js';
import { Table, type Column } from '../ui/table.js';
import { useWords } from '../words/use-words.js';

/** So many rows are shown at once: a table of thousands would hold up the page. */
const AT_ONCE = 25;

interface BoundedTableProps<T> {
  /** What is listed, such as "hulls". */
  readonly what: string;
  readonly caption: string;
  readonly columns: readonly Column<T>[];
  readonly rows: readonly T[];
}

/** A table of rows that are all there, of which some are shown; the next and the earlier ones take their place. */
export const BoundedTable = <T,>({ what, caption, columns, rows }: BoundedTableProps<T>) => {
  const { t } = useWords();
  const [asked, setFrom] = useState(0);
  const from = asked < rows.length ? asked : 0;
  const to = Math.min(rows.length, from + AT_ONCE);
  return (
    <>
      <Table caption={caption} columns={columns} rows={rows.slice(from, to)} />
      {rows.length <= AT_ONCE ? null : (
        <div className="more">
          <p className="note soft" role="status">
            {t('record.rowsOf', { from: from + 1, to, count: rows.length, what })}
          </p>
          {from === 0 ? null : (
            <Button onPress={() => setFrom(from - AT_ONCE)}>{t('record.earlierRows', { what })}</Button>
          )}
          {to === rows.length ? null : <Button onPress={() => setFrom(to)}>{t('record.nextRows', { what })}</Button>}
        </div>
      )}
    </>
  );
};
