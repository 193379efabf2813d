import { getRouteApi } from '@tanstack/react-router';
import { useState } from 'react';
import { useHolder } from '../../station-frame/use-holder.js';
import { useWords } from '../../words/use-words.js';
import { judgeable } from '../judgeable.js';
import { Kept } from '../kept.js';
import { PartFrame } from '../part-frame.js';
import { JudgeForm } from './judge-form.js';

const route = getRouteApi('/station/bay/$part/judge/$mark');

/** Where another person accepts or refuses what was handed back, or inspects an accepted repair again. */
export const JudgePage = () => {
  const { t } = useWords();
  const { part: number, mark } = route.useParams();
  const [kept, setKept] = useState<string>();
  const badge = useHolder()?.badge ?? '';
  return (
    <PartFrame number={number} task={t('bay.judgeTitle', { mark })}>
      {({ part }) => {
        if (kept !== undefined)
          return (
            <Kept
              id={kept}
              part={number}
              waits={t('bay.judgementWaits')}
              again={t('bay.judgeAgain', { mark })}
              onAgain={() => setKept(undefined)}
              next={() => (
                <p>
                  <b>{t('bay.judged', { mark })}</b>
                </p>
              )}
            />
          );
        const found = judgeable(part).find((each) => each.mark === mark);
        if (found === undefined) return <p>{t('bay.nothingToJudge', { mark })}</p>;
        return <JudgeForm part={part} judged={found} badge={badge} onKept={setKept} />;
      }}
    </PartFrame>
  );
};
