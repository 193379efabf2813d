import { Link } from '@tanstack/react-router';
import { ROLES } from '@hull-record/contracts/who-may';
import { post } from '../api/ask.js';
import { given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';

/** A person by badge, with the roles of the jobs that the person has. */
export const RegisterPerson = () => {
  const { t, term } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'badge', label: t('people.badge') },
            { name: 'name', label: t('people.name'), kind: 'words', hint: t('people.nameHint') },
            { name: 'dealer', label: t('people.dealer'), hint: t('people.dealerHint') },
          ],
        },
        {
          name: t('people.roles'),
          fields: ROLES.map((role) => ({
            name: `role ${role}`,
            label: term(role),
            kind: 'tick' as const,
            pointer: '/role',
          })),
        },
      ]}
      button={t('people.registerDo')}
      send={(said, envelope) =>
        post(
          '/api/people',
          {},
          {
            ...envelope,
            badge: said('badge'),
            name: said('name'),
            roles: ROLES.filter((role) => said(`role ${role}`) === 'yes'),
            ...given('dealer', said('dealer')),
          },
        )
      }
      done={({ result: { code } }) => (
        <p>
          {mark('made', t('people.registered', { badge: code }))}{' '}
          <Link to="/people/$badge" params={{ badge: code }}>
            {t('people.giveCodeNow')}
          </Link>
        </p>
      )}
    />
  );
};
