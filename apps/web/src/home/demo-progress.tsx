import type { Health } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { readinessQuery } from '../api/queries.js';
import { mark } from '../marks/mark.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** How far the demo plant is, asked again while it loads and the page is still open. Silent when there is no demo. */
export const DemoProgress = () => {
  const { t } = useWords();
  const { data, error } = useQuery(readinessQuery);
  return (
    <div role="status" className="demo">
      {error === null ? null : mark('near', t('home.notReady'))}
      {data === undefined || error !== null ? null : <Progress demo={data.demo} />}
    </div>
  );
};

interface ProgressProps {
  readonly demo: Health['demo'];
}

const Progress = ({ demo: { state, done, total, detail } }: ProgressProps): ReactNode => {
  const { t } = useWords();
  switch (state) {
    case 'off':
      return null;
    case 'loaded':
      return mark('made', t('home.demoLoaded'));
    case 'failed':
      return mark(
        'outside',
        <Text of="home.demoFailed" with={{ detail: <Said text={detail ?? t('home.noReason')} /> }} />,
      );
    case 'loading':
      return (
        <>
          {mark('to come', t('home.demoLoading', { done, total }))}
          <Bar share={total === 0 ? 0 : done / total} />
        </>
      );
  }
};

const Bar = ({ share }: { readonly share: number }) => (
  <svg className="progress" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
    <rect className="well" width="100" height="4" />
    <rect className="done" width={100 * share} height="4" />
  </svg>
);
