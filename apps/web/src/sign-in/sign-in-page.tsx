import { getRouteApi } from '@tanstack/react-router';
import { Page } from '../ui/page.js';
import { useWords } from '../words/use-words.js';

const route = getRouteApi('/sign-in');

/** Where a person is led when the service asks who they are, with the way back to where they were. */
export const SignInPage = () => {
  const { t } = useWords();
  const { from = '/' } = route.useSearch();
  return (
    <Page title={t('app.signIn')} name={t('app.signIn')}>
      <p className="lead">{t('app.signInAsked')}</p>
      <p className="lead">{t('app.signInHow')}</p>
      <p>
        <a href={ownAddress(from)}>{t('app.signInBack')}</a>
      </p>
    </Page>
  );
};

/** An address of this app; what would lead to another site leads to the start. */
const ownAddress = (from: string): string => (/^\/(?![/\\])/.test(from) ? from : '/');
