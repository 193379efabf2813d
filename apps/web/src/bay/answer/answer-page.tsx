import type { DefectView, PartView } from '@hull-record/contracts';
import { useMutation } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { useState } from 'react';
import { queueEntry } from '../../outbox/queue-entry.js';
import { Button } from '../../ui/button.js';
import { TextField } from '../../ui/text-field.js';
import { useWords } from '../../words/use-words.js';
import { EntryPage } from '../entry-page.js';
import { NotKept } from '../not-kept.js';

const route = getRouteApi('/station/bay/$part/answer/$mark');

/** Answers what a defect of cure asks: of which bucket or gun it came, as far as anybody knows. */
export const AnswerPage = () => {
  const { t } = useWords();
  const { part: number, mark } = route.useParams();
  return (
    <EntryPage
      part={number}
      task={t('bay.answerTitle', { mark })}
      waits={t('bay.answerWaits')}
      again={t('bay.answerAgain')}
      form={({ part }, onKept) => {
        const defect = part.defects.find((each) => each.mark === mark);
        if (defect === undefined) return <p>{t('bay.noDefect', { mark })}</p>;
        return <AnswerForm part={part} defect={defect} onKept={(id) => onKept({ id })} />;
      }}
      next={() => (
        <p>
          <b>{t('bay.answered', { mark })}</b>
        </p>
      )}
    />
  );
};

interface AnswerFormProps {
  readonly part: PartView;
  readonly defect: DefectView;
  readonly onKept: (id: string) => void;
}

const AnswerForm = ({ part, defect, onKept }: AnswerFormProps) => {
  const { t, kind, term } = useWords();
  const [lot, setLot] = useState('');
  const [gun, setGun] = useState('');
  const [note, setNote] = useState('');
  const keeping = useMutation({
    networkMode: 'always',
    mutationFn: () =>
      queueEntry(
        '/api/defects/:defect/answers',
        { defect: defect.id },
        { lot: codeIn(lot), gun: codeIn(gun), note: note.trim() || undefined },
        { lanes: [part.number], about: `${part.number}, ${defect.mark}`, detail: lot || gun },
      ),
    onSuccess: onKept,
  });
  const nothing = [lot, gun, note].every((each) => each.trim() === '');
  return (
    <div className="entry">
      <p>{t('bay.answerHow', { kind: kind(defect.kind), asks: defect.asks.map(term).join(', ') })}</p>
      <TextField label={t('bay.ofBucket')} hint={t('bay.scanHint')} kind="text" value={lot} onChange={setLot} />
      <TextField label={t('bay.ofGun')} hint={t('bay.scanHint')} kind="text" value={gun} onChange={setGun} />
      <TextField label={t('bay.whyNeither')} kind="lines" value={note} onChange={setNote} />
      <NotKept error={keeping.error} />
      <Button className="btn go" busy={keeping.isPending} disabled={nothing} onPress={() => keeping.mutate()}>
        {t('bay.saveAnswer')}
      </Button>
    </div>
  );
};

const LABEL = /\/l\/[a-z]+\/([^/?#\s]+)/;

/** The code that was typed, or that the label scanned says. */
const codeIn = (typed: string): string | undefined => {
  const [, encoded] = LABEL.exec(typed) ?? [];
  return (encoded === undefined ? typed.trim() : decodeURIComponent(encoded)) || undefined;
};
