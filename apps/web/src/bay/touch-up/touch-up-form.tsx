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
import { queuePhotosOfRows } from '../materials/queue-photos-of-rows.js';
import { takenOf, type TakenRow } from '../materials/taken-row.js';
import { DoneBy } from '../done-by.js';
import type { KeptEntry } from '../entry-page.js';
import { KeepEntry } from '../keep-entry.js';
import { FIRST_SPOTS, SpotsFields, zonesOf, type SpotsRow } from './spots-fields.js';

interface TouchUpFormProps {
  readonly part: PartView;
  readonly badge: string;
  readonly onKept: (kept: KeptEntry) => void;
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
  const keep = async (): Promise<KeptEntry> => {
    const about = { lanes: [part.number], about: part.number };
    const id = await queueEntry(
      '/api/parts/:part/touch-ups',
      { part: part.number },
      {
        spots: rows.map(({ zone, kind, count, largest }) => ({ zone, kind, count, largestMm: typedNumber(largest) })),
        doneBy: badgesIn(doneBy),
        used: used.flatMap((row) => takenOf(row) ?? []),
        note: note.trim() || undefined,
      },
      { ...about, detail: String(rows.reduce((sum, { count }) => sum + count, 0)) },
    );
    return { id, lost: await queuePhotosOfRows(id, used, about) };
  };
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
      <DoneBy value={doneBy} onChange={setDoneBy} />
      <TextField label={t('bay.note')} hint={t('bay.noteHint')} kind="lines" value={note} onChange={setNote} />
      <p className="soft small">{t('bay.caution.touchUp')}</p>
      <KeepEntry missing={missing.map((each) => t(`bay.spotsLack.${each}`))} keeping={keeping}>
        {t('bay.saveTouchUp')}
      </KeepEntry>
    </div>
  );
};
