import { useQuery } from '@tanstack/react-query';
import { Link, useLocation, useRouter } from '@tanstack/react-router';
import { useEffect } from 'react';
import type { LabelTargetView } from '@hull-record/contracts';
import { Refused } from '../api/problem.js';
import { labelTargetQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { Empty, Page } from '../ui/page.js';
import { Term, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** Where the code on a label leads: the page of what it is on. */
export const LabelPage = () => {
  const { t } = useWords();
  const path = useLocation({ select: ({ publicHref }) => publicHref });
  // On its way to another page the address is that of the other page already.
  const query = useQuery({ ...labelTargetQuery(path), enabled: path.startsWith('/l/') });
  return (
    <Page title={t('app.label')} name={t('app.label')}>
      {query.error instanceof Refused && query.error.status === 400 ? (
        <Unknown />
      ) : (
        <Answer what={t('app.label')} query={query}>
          {(target) => <Target of={target} />}
        </Answer>
      )}
    </Page>
  );
};

const Target = ({ of: { of, code, page } }: { readonly of: LabelTargetView }) => {
  const { history } = useRouter();
  useEffect(() => {
    if (page !== null) history.replace(page.replace(/^#/, ''));
  }, [history, page]);
  if (page !== null) return null;
  return (
    <Empty>
      <Text of="app.labelNowhere" with={{ of: <Term word={of} />, code }} />
    </Empty>
  );
};

/** The path is none of a label. */
const Unknown = () => (
  <Empty>
    <Text of="app.labelUnknown" with={{ search: (inside) => <Link to="/search">{inside}</Link> }} />
  </Empty>
);
