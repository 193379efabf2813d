import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState, type ReactNode } from 'react';
import { Trouble } from '../asked/trouble.js';
import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';

interface ActButtonProps<T> {
  readonly words: string;
  /** What is confirmed first, where it is not safe to undo. */
  readonly sure?: string;
  readonly act: () => Promise<T>;
  readonly done: (answer: T) => ReactNode;
}

/** A button that does something that needs no words of a person, and says what came of it. */
export const ActButton = <T,>({ words, sure, act, done }: ActButtonProps<T>) => {
  const { t } = useWords();
  const client = useQueryClient();
  const [asking, setAsking] = useState(false);
  const doing = useMutation({
    mutationFn: act,
    onSuccess: () => void client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== 'session' }),
    onSettled: () => setAsking(false),
  });
  return (
    <div className="act">
      {asking && sure !== undefined ? (
        <div className="caution sure" role="group" aria-label={t('entry.sure')}>
          <p>{sure}</p>
          <div className="buttons">
            <Button onPress={() => setAsking(false)}>{t('entry.back')}</Button>
            <Button className="btn do" onPress={() => doing.mutate()} busy={doing.isPending}>
              {t('entry.yesDo')}
            </Button>
          </div>
        </div>
      ) : (
        <Button onPress={() => (sure === undefined ? doing.mutate() : setAsking(true))} busy={doing.isPending}>
          {words}
        </Button>
      )}
      {doing.error ? <Trouble what={words} error={doing.error} again={() => doing.mutate()} /> : null}
      {doing.data === undefined || asking ? null : <div role="status">{done(doing.data)}</div>}
    </div>
  );
};
