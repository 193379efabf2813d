import { Loading } from '../asked/answer.js';
import { Trouble } from '../asked/trouble.js';
import { Unreachable } from '../api/problem.js';
import { useWords } from '../words/use-words.js';

/** Said in place of a page that could not be fetched or shown. To try again is to load it anew. */
export const PageTrouble = ({ error }: { readonly error: unknown }) => {
  const { t } = useWords();
  const notFetched = error instanceof TypeError && /import|fetch|load/i.test(error.message);
  return (
    <Trouble what={t('app.page')} error={notFetched ? new Unreachable() : error} again={() => location.reload()} />
  );
};

/** Said while a page is fetched that takes its time. */
export const PageOnItsWay = () => {
  const { t } = useWords();
  return <Loading what={t('app.page')} />;
};
