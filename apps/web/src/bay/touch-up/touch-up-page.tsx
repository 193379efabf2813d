import { getRouteApi } from '@tanstack/react-router';
import { useState } from 'react';
import { useHolder } from '../../station-frame/use-holder.js';
import { useWords } from '../../words/use-words.js';
import { Kept } from '../kept.js';
import { PartFrame } from '../part-frame.js';
import { TouchUpForm } from './touch-up-form.js';

const route = getRouteApi('/station/bay/$part/touch-up');

/** Touches up small spots of one part, and says what became of the entry. */
export const TouchUpPage = () => {
  const { t } = useWords();
  const { part: number } = route.useParams();
  const [kept, setKept] = useState<string>();
  const badge = useHolder()?.badge ?? '';
  return (
    <PartFrame number={number} task={t('bay.touchUp')}>
      {({ part }) =>
        kept === undefined ? (
          <TouchUpForm key={badge} part={part} badge={badge} onKept={setKept} />
        ) : (
          <Kept
            id={kept}
            part={number}
            waits={t('bay.waitsToAccept')}
            again={t('bay.anotherTouchUp')}
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
