import type { PartView } from '@hull-record/contracts';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { queueEntry } from '../../outbox/queue-entry.js';
import { Button } from '../../ui/button.js';
import { TextField } from '../../ui/text-field.js';
import { useWords } from '../../words/use-words.js';
import type { Judgeable } from '../judgeable.js';
import { NotKept } from '../not-kept.js';
import { RepairDone } from './repair-done.js';
import { TouchUpDone } from './touch-up-done.js';

interface JudgeFormProps {
  readonly part: PartView;
  readonly judged: Judgeable;
  readonly badge: string;
  readonly onKept: (id: string) => void;
}

/** What was done, to be accepted or refused by somebody who did not do it. */
export const JudgeForm = ({ part, judged, badge, onKept }: JudgeFormProps) => {
  const { t } = useWords();
  const { mark, doneBy, waits, of } = judged;
  const [note, setNote] = useState('');
  const keeping = useMutation({
    networkMode: 'always',
    mutationFn: (good: boolean) => keepJudgement(part.number, judged, good, note),
    onSuccess: onKept,
  });
  const own = doneBy.some((each) => each.toLowerCase() === badge.toLowerCase());
  return (
    <div className="entry">
      {'repair' in of ? <RepairDone part={part} repair={of.repair} /> : <TouchUpDone touchUp={of.touchUp} />}
      {own ? (
        <p className="wrong" role="status">
          {t('bay.ownWork', { mark })}
        </p>
      ) : (
        <>
          <p>{t('bay.judgeHow')}</p>
          <TextField
            label={t('bay.note')}
            hint={t('bay.refuseNeedsNote')}
            kind="lines"
            value={note}
            onChange={setNote}
          />
          <NotKept error={keeping.error} />
          <div className="acts">
            <Button busy={keeping.isPending} disabled={note.trim() === ''} onPress={() => keeping.mutate(false)}>
              {waits ? t('bay.refuse', { mark }) : t('bay.fails', { mark })}
            </Button>
            <Button className="btn go" busy={keeping.isPending} onPress={() => keeping.mutate(true)}>
              {waits ? t('bay.acceptIt', { mark }) : t('bay.passes', { mark })}
            </Button>
          </div>
        </>
      )}
    </div>
  );
};

const keepJudgement = (part: string, { mark, of, waits }: Judgeable, good: boolean, typed: string): Promise<string> => {
  const about = { lanes: [part], about: `${part}, ${mark}` };
  const note = typed.trim() || undefined;
  if ('touchUp' in of)
    return queueEntry(
      '/api/touch-ups/:touchUp/acceptances',
      { touchUp: of.touchUp.id },
      { accepted: good, note },
      about,
    );
  const repair = { repair: of.repair.id };
  return waits
    ? queueEntry('/api/repairs/:repair/acceptances', repair, { accepted: good, note }, about)
    : queueEntry('/api/repairs/:repair/re-inspections', repair, { passed: good, note }, about);
};
