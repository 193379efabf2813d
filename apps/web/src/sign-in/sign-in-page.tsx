import type { SessionView } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { post } from '../api/ask.js';
import { sessionQuery } from '../api/queries.js';
import { Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { EntryForm } from './entry-form.js';
import { Fold } from '../ui/fold.js';
import { useArrival } from './use-arrival.js';

const route = getRouteApi('/sign-in');

/** Where a person signs in by badge and PIN, then is led back to where they were. */
export const SignInPage = () => {
  const { t } = useWords();
  const { from = '/' } = route.useSearch();
  const arrive = useArrival();
  const { data } = useQuery(sessionQuery);
  return (
    <Page title={t('app.signIn')} name={t('app.signIn')}>
      <p className="lead">{t('signIn.lead')}</p>
      {data?.demo ? <p className="caution">{t('signIn.demo')}</p> : null}
      <EntryForm
        fields={[
          { name: 'badge', label: t('signIn.badge'), fills: 'username' },
          {
            name: 'secret',
            label: t('signIn.secret'),
            secret: true,
            fills: 'current-password',
          },
        ]}
        button={t('app.signIn')}
        send={({ badge, secret }) => post('/api/sign-in', {}, { badge, secret })}
        onDone={(view) => arrive(view, startOf(view, from))}
      />
      <p className="note soft">{t('signIn.secretHint')}</p>
      {data?.openId ? (
        <p>
          <a href="/api/open-id/start">{t('signIn.office', { name: data.openId })}</a>
        </p>
      ) : null}
      <Fold summary={t('signIn.firstTime')}>
        <FirstTime from={from} />
      </Fold>
      <p className="note soft">
        {data?.enrolled ? t('signIn.device', { device: data.device ?? '' }) : t('signIn.noDevice')}
      </p>
    </Page>
  );
};

/** Where to go on: a dealer has pages of their own. */
const startOf = ({ person }: SessionView, from: string): string =>
  person?.roles.every((role) => role === 'dealer') ? '/own-hulls' : from;

/** The first time, or after a PIN was lost: a one-time code lets a person choose a new one. */
const FirstTime = ({ from }: { readonly from: string }) => {
  const { t } = useWords();
  const arrive = useArrival();
  return (
    <Section name={t('signIn.chooseOwn')}>
      <p className="note">{t('signIn.codeHow')}</p>
      <EntryForm
        fields={[
          { name: 'badge', label: t('signIn.badge'), fills: 'username' },
          { name: 'code', label: t('signIn.code'), fills: 'one-time-code' },
          {
            name: 'secret',
            label: t('signIn.newSecret'),
            hint: t('signIn.rules'),
            secret: true,
            fills: 'new-password',
          },
        ]}
        button={t('signIn.choose')}
        send={({ badge, code, secret }) => post('/api/first-sign-in', {}, { badge, code, secret })}
        onDone={(view) => arrive(view, from)}
      />
    </Section>
  );
};
