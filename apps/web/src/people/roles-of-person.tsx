import { ROLES, type Role } from '@hull-record/contracts/who-may';
import { post } from '../api/ask.js';
import { given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { useWords } from '../words/use-words.js';

interface RolesOfPersonProps {
  readonly badge: string;
  readonly roles: readonly string[];
}

/** Gives a person one more role, or ends one; what was done under it stands. */
export const RolesOfPerson = ({ badge, roles }: RolesOfPersonProps) => {
  const { t, term } = useWords();
  const named = (among: readonly string[]) => among.map((role) => [role, term(role)] as const);
  return (
    <>
      <Fold summary={t('people.grant')}>
        <RecordForm
          groups={[
            {
              fields: [
                {
                  name: 'role',
                  label: t('people.role'),
                  kind: 'choice',
                  options: named(ROLES.filter((role) => !roles.includes(role))),
                },
                { name: 'dealer', label: t('people.dealer'), hint: t('people.dealerHint') },
              ],
            },
          ]}
          button={t('people.grantDo')}
          send={(said, envelope) =>
            post(
              '/api/people/:badge/roles',
              { badge },
              { ...envelope, role: said('role') as Role, ...given('dealer', said('dealer')) },
            )
          }
          done={({ result }) => <p>{mark('made', t('people.granted', { role: term(result.role) }))}</p>}
        />
      </Fold>
      <Fold summary={t('people.end')}>
        <RecordForm
          groups={[
            {
              fields: [
                { name: 'role', label: t('people.role'), kind: 'choice', options: named(roles) },
                { name: 'reason', label: t('record.reason'), kind: 'words' },
              ],
            },
          ]}
          button={t('people.endDo')}
          sure={(said) => t('people.endSure', { badge, role: term(said('role')) })}
          send={(said, envelope) =>
            post(
              '/api/people/:badge/role-ends',
              { badge },
              { ...envelope, role: said('role') as Role, reason: said('reason') },
            )
          }
          done={({ result }) => <p>{mark('made', t('people.ended', { role: term(result.role) }))}</p>}
        />
      </Fold>
    </>
  );
};
