import { useQuery } from '@tanstack/react-query';
import { Link, useLocation, useRouter } from '@tanstack/react-router';
import { useEffect } from 'react';
import type { LabelTargetView } from '@hull-record/contracts';
import { labelTargetQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { Empty, Page } from '../ui/page.js';
import { Term, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** Where the code on a label leads: the page of what it is on. */
export const LabelPage = () => {
  const { t } = useWords();
  const path = useLocation({ select: ({ publicHref }) => publicHref });
  const query = useQuery(labelTargetQuery(path));
  return (
    <Page title={t('app.label')} name={t('app.label')}>
      <Answer what={t('app.label')} query={query} notThere={<Unknown />}>
        {(target) => <Target of={target} />}
      </Answer>
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

const Unknown = () => (
  <Empty>
    <Text of="app.labelUnknown" with={{ search: (inside) => <Link to="/search">{inside}</Link> }} />
  </Empty>
);
