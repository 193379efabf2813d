import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { act } from '../api/ask.js';
import { peopleQuery } from '../api/queries-of-people.js';
import { useMay } from '../api/use-may.js';
import { Answer } from '../asked/answer.js';
import { ActButton } from '../entry/act-button.js';
import { mark } from '../marks/mark.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { OneTimeCode } from './one-time-code.js';
import { OpenIdLinks } from './open-id-links.js';
import { RolesOfPerson } from './roles-of-person.js';

const route = getRouteApi('/people/$badge');

/** One person: roles, the first code, sessions, the account of the office. */
export const PersonPage = () => {
  const { t } = useWords();
  const { badge } = route.useParams();
  const query = useQuery(peopleQuery);
  return (
    <Page title={t('people.person', { badge })} kind={t('people.badge')} name={badge}>
      <Answer what={t('people.person', { badge })} query={query}>
        {(people) => {
          const person = people.find((each) => each.badge === badge);
          return person === undefined ? (
            <Empty>
              {t('people.notThere', { badge })} <Link to="/people">{t('people.badges')}</Link>
            </Empty>
          ) : (
            <Person badge={badge} roles={person.roles} />
          );
        }}
      </Answer>
    </Page>
  );
};

interface PersonProps {
  readonly badge: string;
  readonly roles: readonly string[];
}

const Person = ({ badge, roles }: PersonProps) => {
  const { t, term } = useWords();
  const may = useMay();
  return (
    <>
      <Facts rows={[[t('people.roles'), roles.map(term).join(', ') || t('people.noRoles')]]} />
      <p className="buttons">
        <Link to="/labels" search={{ of: 'badge', codes: badge }} className="btn">
          {t('people.printBadge')}
        </Link>
      </p>
      {may('giveFirstCode') ? (
        <>
          <Section name={t('people.firstCode')}>
            <p>{t('people.firstCodeHow')}</p>
            <ActButton
              words={t('people.giveCode')}
              sure={t('people.giveCodeSure')}
              act={() => act('/api/people/:badge/first-codes', { badge })}
              done={(code) => <OneTimeCode code={code} />}
            />
          </Section>
          <Section name={t('people.roles')}>
            <RolesOfPerson badge={badge} roles={roles} />
          </Section>
          <Section name={t('people.sessions')}>
            <p>{t('people.sessionsHow')}</p>
            <ActButton
              words={t('people.endSessions')}
              sure={t('people.endSessionsSure', { badge })}
              act={() => act('/api/people/:badge/session-ends', { badge })}
              done={() => <p>{mark('made', t('people.sessionsEnded'))}</p>}
            />
          </Section>
          <Section name={t('people.openId')}>
            <OpenIdLinks badge={badge} />
          </Section>
        </>
      ) : (
        <p className="note soft">{t('people.readsOnly')}</p>
      )}
    </>
  );
};
