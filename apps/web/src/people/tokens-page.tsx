import { useQuery } from '@tanstack/react-query';
import { act, post } from '../api/ask.js';
import { tokensQuery } from '../api/queries-of-people.js';
import { WholeTable } from '../asked/whole-table.js';
import { ActButton } from '../entry/act-button.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Page, Section } from '../ui/page.js';
import { Day, Moment } from '../words/moments.js';
import { useWords } from '../words/use-words.js';
import { OneTimeCode } from './one-time-code.js';
import { PeopleWays } from './people-ways.js';

const SCOPES = ['read', 'record', 'papers'] as const;

/** Tokens of programs: each works in the name of a person, and is shown once. */
export const TokensPage = () => {
  const { t } = useWords();
  const query = useQuery(tokensQuery);
  return (
    <Page title={t('people.tokens')} name={t('people.tokens')}>
      <PeopleWays />
      <p className="lead">{t('people.tokensLead')}</p>
      <Section name={t('people.newToken')}>
        <NewToken />
      </Section>
      <Section name={t('people.knownTokens')}>
        <WholeTable
          what={t('people.theTokens')}
          caption={t('people.tokensCaption')}
          columns={[
            { head: t('people.tokenName'), cell: ({ name }) => name, names: true },
            { head: t('people.badge'), cell: ({ badge }) => badge, class: 'n' },
            { head: t('people.deviceCode'), cell: ({ device }) => device, class: 'n' },
            {
              head: t('people.scopes'),
              cell: ({ scopes }) => scopes.map((scope) => t(`people.scope.${scope}`)).join(', '),
            },
            { head: t('people.until'), cell: ({ until }) => <Day at={until} /> },
            {
              head: t('people.lastUsed'),
              cell: ({ lastUsed }) => (lastUsed === null ? t('people.never') : <Moment at={lastUsed} />),
            },
            {
              head: t('record.state'),
              cell: ({ id, name, revoked }) =>
                revoked ? (
                  mark('stopped', t('people.isRevoked'))
                ) : (
                  <ActButton
                    words={t('people.revoke')}
                    sure={t('people.revokeTokenSure', { name })}
                    act={() => act('/api/tokens/:token/revocations', { token: id })}
                    done={() => t('people.isRevoked')}
                  />
                ),
            },
          ]}
          query={query}
          empty={t('people.noTokens')}
        />
      </Section>
    </Page>
  );
};

const NewToken = () => {
  const { t } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'name', label: t('people.tokenName') },
            { name: 'badge', label: t('people.inNameOf') },
            { name: 'device', label: t('people.deviceCode'), hint: t('people.tokenDevice') },
            { name: 'days', label: t('people.days'), kind: 'decimal' },
          ],
        },
        {
          name: t('people.scopes'),
          fields: SCOPES.map((scope) => ({
            name: scope,
            label: t(`people.scope.${scope}`),
            kind: 'tick' as const,
            pointer: '/scopes',
          })),
        },
      ]}
      first={{ days: '90', read: 'yes' }}
      button={t('people.makeToken')}
      send={(said) =>
        post(
          '/api/tokens',
          {},
          {
            name: said('name'),
            badge: said('badge'),
            device: said('device'),
            days: Number(said('days')),
            scopes: SCOPES.filter((scope) => said(scope) === 'yes'),
          },
        )
      }
      done={({ token, until }) => <OneTimeCode code={{ code: token, until }} />}
    />
  );
};
