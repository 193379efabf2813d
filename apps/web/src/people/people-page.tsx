import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { peopleQuery } from '../api/queries-of-people.js';
import { WholeTable } from '../asked/whole-table.js';
import { Allowed } from '../entry/allowed.js';
import { Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { PeopleWays } from './people-ways.js';
import { RegisterPerson } from './register-person.js';

/** People by badge with their roles. Names are kept apart from the record, and nothing counts what a person did. */
export const PeoplePage = () => {
  const { t, term } = useWords();
  const query = useQuery(peopleQuery);
  return (
    <Page title={t('people.title')} name={t('people.title')}>
      <PeopleWays />
      <Section name={t('people.register')}>
        <Allowed to="registerPerson" what={t('people.register')}>
          <RegisterPerson />
        </Allowed>
      </Section>
      <Section name={t('people.badges')}>
        <WholeTable
          what={t('people.thePeople')}
          caption={t('people.caption')}
          columns={[
            {
              head: t('people.badge'),
              cell: ({ badge }) => (
                <Link to="/people/$badge" params={{ badge }}>
                  {badge}
                </Link>
              ),
              names: true,
              class: 'n',
            },
            { head: t('people.roles'), cell: ({ roles }) => roles.map(term).join(', ') || t('people.noRoles') },
          ]}
          query={query}
          empty={t('people.none')}
        />
      </Section>
    </Page>
  );
};
