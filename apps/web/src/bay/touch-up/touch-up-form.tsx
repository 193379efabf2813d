import type { PartView } from '@hull-record/contracts';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { queueEntry } from '../../outbox/queue-entry.js';
import { Button } from '../../ui/button.js';
import { TextField } from '../../ui/text-field.js';
import { typedNumber } from '../../words/typed-number.js';
import { useWords } from '../../words/use-words.js';
import { badgesIn } from '../badges.js';
import { isNoFigure } from '../defect/draft.js';
import { TakenList } from '../materials/taken-list.js';
import { takenOf, type TakenRow } from '../materials/taken-row.js';
import { NotKept } from '../not-kept.js';
import { FIRST_SPOTS, SpotsFields, zonesOf, type SpotsRow } from './spots-fields.js';

interface TouchUpFormProps {
  readonly part: PartView;
  readonly badge: string;
  readonly onKept: (id: string) => void;
}

/** Many small spots in one entry: how many of which kind in which zone, and the gel coat they took. */
export const TouchUpForm = ({ part, badge, onKept }: TouchUpFormProps) => {
  const { t } = useWords();
  const [rows, setRows] = useState<readonly SpotsRow[]>(() => [FIRST_SPOTS(zonesOf(part.kind)[0] ?? '')]);
  const [used, setUsed] = useState<readonly TakenRow[]>([]);
  const [doneBy, setDoneBy] = useState(badge);
  const [note, setNote] = useState('');
  const missing = [
    ...(rows.some(({ kind }) => kind === '') ? (['kind'] as const) : []),
    ...(rows.some(({ largest }) => isNoFigure(largest)) ? (['figure'] as const) : []),
    ...(used.some((row) => takenOf(row) === null) ? (['used'] as const) : []),
    ...(badgesIn(doneBy).length === 0 ? (['maker'] as const) : []),
  ];
  const keep = (): Promise<string> =>
    queueEntry(
      '/api/parts/:part/touch-ups',
      { part: part.number },
      {
        spots: rows.map(({ zone, kind, count, largest }) => ({ zone, kind, count, largestMm: typedNumber(largest) })),
        doneBy: badgesIn(doneBy),
        used: used.flatMap((row) => takenOf(row) ?? []),
        note: note.trim() || undefined,
      },
      { lanes: [part.number], about: part.number, detail: String(rows.reduce((sum, { count }) => sum + count, 0)) },
    );
  const keeping = useMutation({ networkMode: 'always', mutationFn: keep, onSuccess: onKept });
  return (
    <div className="entry">
      {rows.map((row, i) => (
        <SpotsFields
          key={i}
          number={i + 1}
          zones={zonesOf(part.kind)}
          row={row}
          onRow={(change) => setRows(rows.map((each, at) => (at === i ? { ...each, ...change } : each)))}
          {...(rows.length > 1 ? { onDrop: () => setRows(rows.toSpliced(i, 1)) } : {})}
        />
      ))}
      <Button onPress={() => setRows([...rows, FIRST_SPOTS(rows.at(-1)?.zone ?? '')])}>{t('bay.moreSpots')}</Button>
      <p className="soft small">{t('bay.touchUpLimits')}</p>
      <TakenList rows={used} onRows={setUsed} />
      <TextField label={t('bay.doneBy')} hint={t('bay.doneByHint')} kind="text" value={doneBy} onChange={setDoneBy} />
      <TextField label={t('bay.note')} hint={t('bay.noteHint')} kind="lines" value={note} onChange={setNote} />
      <p className="soft small">{t('bay.caution.touchUp')}</p>
      {missing.length === 0 ? null : (
        <p className="soft">
          {t('bay.missing', { what: missing.map((each) => t(`bay.spotsLack.${each}`)).join(', ') })}
        </p>
      )}
      <NotKept error={keeping.error} />
      <Button
        className="btn go"
        busy={keeping.isPending}
        disabled={missing.length > 0}
        onPress={() => keeping.mutate()}
      >
        {t('bay.saveTouchUp')}
      </Button>
    </div>
  );
};
