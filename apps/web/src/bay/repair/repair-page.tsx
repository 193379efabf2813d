import { getRouteApi } from '@tanstack/react-router';
import { Suspense } from 'react';
import { Loading } from '../../asked/answer.js';
import { useHolder } from '../../station-frame/use-holder.js';
import { useWords } from '../../words/use-words.js';
import { HandedBack } from '../handed-back.js';
import { LateRepairForm } from '../late-forms.js';

const route = getRouteApi('/station/bay/$part/repair');

/** A repair of one part, from its order to handing it back. */
export const RepairPage = () => {
  const { t } = useWords();
  const { part } = route.useParams();
  const badge = useHolder()?.badge ?? '';
  return (
    <HandedBack
      part={part}
      task={t('bay.repairOrder')}
      again={t('bay.anotherRepair')}
      form={(at, onKept) => (
        <Suspense fallback={<Loading what={t('app.page')} />}>
          <LateRepairForm key={badge} at={at} badge={badge} onKept={onKept} />
        </Suspense>
      )}
    />
  );
};
