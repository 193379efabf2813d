import type { ReactNode } from 'react';
import { Button } from '../../ui/button.js';
import { Group } from '../../ui/group.js';
import { Said } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import { useDraftFields } from './draft-context.js';

interface DraftRowsProps {
  /** Where the list stands in the draft (RFC 6901). */
  readonly at: string;
  readonly name: string;
  /** A new row. */
  readonly blank: object;
  readonly add: string;
  readonly drop: (number: number) => string;
  /** Below so many rows none can be taken away. */
  readonly least?: number;
  readonly children: (at: string) => ReactNode;
}

/** Rows of a draft that are added and taken away; what is wrong with the list as a whole stands under it. */
export const DraftRows = ({ at, name, blank, add, drop, least = 0, children }: DraftRowsProps) => {
  const { t } = useWords();
  const fields = useDraftFields();
  const rows = (fields.at(at) ?? []) as readonly unknown[];
  const wrong = fields.wrongAt(at);
  return (
    <Group name={name}>
      {rows.map((_, i) => (
        <div className="draft-row" key={i} role="group" aria-label={t('entry.rowOf', { name, number: i + 1 })}>
          {children(`${at}/${i}`)}
          {rows.length <= least ? null : (
            <Button label={drop(i + 1)} onPress={() => fields.put(at, rows.toSpliced(i, 1))}>
              ×
            </Button>
          )}
        </div>
      ))}
      {wrong === undefined ? null : (
        <p className="note wrong wide">
          <Said text={wrong} />
        </p>
      )}
      <Button onPress={() => fields.put(at, [...rows, blank])}>{add}</Button>
    </Group>
  );
};
