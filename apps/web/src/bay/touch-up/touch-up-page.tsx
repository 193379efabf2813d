import { getRouteApi } from '@tanstack/react-router';
import { useHolder } from '../../station-frame/use-holder.js';
import { useWords } from '../../words/use-words.js';
import { HandedBack } from '../handed-back.js';
import { TouchUpForm } from './touch-up-form.js';

const route = getRouteApi('/station/bay/$part/touch-up');

/** Touches up small spots of one part, and says what became of the entry. */
export const TouchUpPage = () => {
  const { t } = useWords();
  const { part } = route.useParams();
  const badge = useHolder()?.badge ?? '';
  return (
    <HandedBack
      part={part}
      task={t('bay.touchUp')}
      again={t('bay.anotherTouchUp')}
      form={(at, onKept) => <TouchUpForm key={badge} part={at.part} badge={badge} onKept={onKept} />}
    />
  );
};
