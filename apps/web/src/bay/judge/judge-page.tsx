import { getRouteApi } from '@tanstack/react-router';
import { useHolder } from '../../station-frame/use-holder.js';
import { useWords } from '../../words/use-words.js';
import { EntryPage } from '../entry-page.js';
import { judgeable } from '../judgeable.js';
import { JudgeForm } from './judge-form.js';

const route = getRouteApi('/station/bay/$part/judge/$mark');

/** Where another person accepts or refuses what was handed back, or inspects an accepted repair again. */
export const JudgePage = () => {
  const { t } = useWords();
  const { part: number, mark } = route.useParams();
  const badge = useHolder()?.badge ?? '';
  return (
    <EntryPage
      part={number}
      task={t('bay.judgeTitle', { mark })}
      waits={t('bay.judgementWaits')}
      again={t('bay.judgeAgain', { mark })}
      form={({ part }, onKept) => {
        const found = judgeable(part).find((each) => each.mark === mark);
        if (found === undefined) return <p>{t('bay.nothingToJudge', { mark })}</p>;
        return <JudgeForm part={part} judged={found} badge={badge} onKept={(id) => onKept({ id })} />;
      }}
      next={() => (
        <p>
          <b>{t('bay.judged', { mark })}</b>
        </p>
      )}
    />
  );
};
