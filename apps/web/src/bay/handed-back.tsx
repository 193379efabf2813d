import { useWords } from '../words/use-words.js';
import { EntryPage } from './entry-page.js';

type HandedBackProps = Omit<Parameters<typeof EntryPage>[0], 'waits' | 'next'>;

/** A page of work that is handed back, to be accepted by somebody who did not do it. */
export const HandedBack = (props: HandedBackProps) => {
  const { t } = useWords();
  return (
    <EntryPage
      {...props}
      waits={t('bay.waitsToAccept')}
      next={(mark) => (
        <p>
          <b>{t('bay.recorded', { mark })}</b> {t('bay.handedBack', { mark })}
        </p>
      )}
    />
  );
};
