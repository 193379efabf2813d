import { getRouteApi } from '@tanstack/react-router';
import { Suspense, useState } from 'react';
import { Loading } from '../../asked/answer.js';
import { useWords } from '../../words/use-words.js';
import { Kept } from '../kept.js';
import { LateDefectForm } from '../late-forms.js';
import { PartFrame } from '../part-frame.js';

const route = getRouteApi('/station/bay/$part/defect');

/** Logs a defect of one part, and says what became of it. */
export const LogDefectPage = () => {
  const { t } = useWords();
  const { part: number } = route.useParams();
  const [kept, setKept] = useState<string>();
  return (
    <PartFrame number={number} task={t('bay.newDefect')}>
      {(at) =>
        kept === undefined ? (
          <Suspense fallback={<Loading what={t('app.page')} />}>
            <LateDefectForm at={at} onKept={setKept} />
          </Suspense>
        ) : (
          <Kept
            id={kept}
            part={number}
            waits={t('bay.waits')}
            again={t('bay.another')}
            onAgain={() => setKept(undefined)}
            next={(mark = '') => (
              <p>
                <b>{t('bay.recorded', { mark })}</b> {t('bay.chalk', { mark })}
              </p>
            )}
          />
        )
      }
    </PartFrame>
  );
};
