import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { GetAnswer } from '../api/contract.js';
import { moldsQuery } from '../api/queries-of-equipment.js';
import { WholeTable } from '../asked/whole-table.js';
import { mark } from '../marks/mark.js';
import { Page } from '../ui/page.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { RegisterMold } from './register-mold.js';

/** The molds; those whose care is overdue stand first. */
export const MoldsPage = () => {
  const { t } = useWords();
  const query = useQuery({ ...moldsQuery, select: overdueFirst });
  return (
    <Page title={t('molds.title')} name={t('molds.title')}>
      <WholeTable
        what={t('molds.the')}
        caption={t('molds.caption')}
        columns={[
          {
            head: t('molds.mold'),
            cell: ({ code }) => (
              <Link to="/molds/$mold" params={{ mold: code }}>
                {code}
              </Link>
            ),
            names: true,
            class: 'n',
          },
          { head: t('record.model'), cell: ({ model }) => model, class: 'n' },
          { head: t('molds.partKind'), cell: ({ partKind }) => <Term word={partKind} /> },
          { head: t('molds.pulls'), cell: ({ pulls }) => pulls, class: 'r' },
          { head: t('molds.care'), cell: ({ overdue }) => <Overdue of={overdue} /> },
        ]}
        query={query}
        empty={t('molds.none')}
      />
      <RegisterMold />
    </Page>
  );
};

const overdueFirst = (molds: GetAnswer<'/api/molds'>): GetAnswer<'/api/molds'> =>
  [...molds].sort((a, b) => b.overdue.length - a.overdue.length || a.code.localeCompare(b.code, 'en'));

/** What care of a mold is overdue. */
const Overdue = ({ of }: { readonly of: readonly string[] }) => {
  const { t } = useWords();
  if (of.length === 0) return mark('inside', t('molds.notDue'));
  return (
    <ul className="plain">
      {of.map((each) => (
        <li key={each}>{mark('near', <Said text={each} />)}</li>
      ))}
    </ul>
  );
};
