import { getRouteApi } from '@tanstack/react-router';
import { Suspense } from 'react';
import { Loading } from '../../asked/answer.js';
import { useWords } from '../../words/use-words.js';
import { EntryPage } from '../entry-page.js';
import { LateDefectForm } from '../late-forms.js';

const route = getRouteApi('/station/bay/$part/defect');

/** Logs a defect of one part, and says what became of it. */
export const LogDefectPage = () => {
  const { t } = useWords();
  const { part } = route.useParams();
  return (
    <EntryPage
      part={part}
      task={t('bay.newDefect')}
      waits={t('bay.waits')}
      again={t('bay.another')}
      form={(at, onKept) => (
        <Suspense fallback={<Loading what={t('app.page')} />}>
          <LateDefectForm at={at} onKept={onKept} />
        </Suspense>
      )}
      next={(mark) => (
        <p>
          <b>{t('bay.recorded', { mark })}</b> {t('bay.chalk', { mark })}
        </p>
      )}
    />
  );
};
