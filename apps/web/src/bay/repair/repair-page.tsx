import { getRouteApi } from '@tanstack/react-router';
import { Suspense, useState } from 'react';
import { Loading } from '../../asked/answer.js';
import { useWords } from '../../words/use-words.js';
import { useHolder } from '../../station-frame/use-holder.js';
import { Kept } from '../kept.js';
import { LateRepairForm } from '../late-forms.js';
import { PartFrame } from '../part-frame.js';

const route = getRouteApi('/station/bay/$part/repair');

/** A repair of one part, from its order to handing it back. */
export const RepairPage = () => {
  const { t } = useWords();
  const { part: number } = route.useParams();
  const [kept, setKept] = useState<string>();
  const badge = useHolder()?.badge ?? '';
  return (
    <PartFrame number={number} task={t('bay.repairOrder')}>
      {(at) =>
        kept === undefined ? (
          <Suspense fallback={<Loading what={t('app.page')} />}>
            <LateRepairForm key={badge} at={at} badge={badge} onKept={setKept} />
          </Suspense>
        ) : (
          <Kept
            id={kept}
            part={number}
            waits={t('bay.waitsToAccept')}
            again={t('bay.anotherRepair')}
            onAgain={() => setKept(undefined)}
            next={(mark = '') => (
              <p>
                <b>{t('bay.recorded', { mark })}</b> {t('bay.handedBack', { mark })}
              </p>
            )}
          />
        )
      }
    </PartFrame>
  );
};
