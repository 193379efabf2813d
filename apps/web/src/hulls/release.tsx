import type { HullView } from '@hull-record/contracts';
import type { ReactNode } from 'react';
import { mark, stamp } from '../marks/mark.js';
import { Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface ReleaseProps {
  readonly release: HullView['release'];
}

/** Whether the hull is released, could be, or what keeps it. */
export const ReleaseLine = ({ release }: ReleaseProps) => (
  <p className="verdict">
    <Standing release={release} />
  </p>
);

const Standing = ({ release: { releasedAt, inTheWay } }: ReleaseProps): ReactNode => {
  const { t } = useWords();
  const count = inTheWay.length;
  if (releasedAt !== null)
    return (
      <>
        {stamp(<Text of="hulls.released" with={{ at: <Moment at={releasedAt} /> }} />)}
        {count === 0 ? null : <> {mark('near', t('hulls.openSince'))}</>}
      </>
    );
  return count === 0 ? mark('inside', t('hulls.nothingInTheWay')) : mark('outside', t('hulls.notReady', { count }));
};

/** Everything in the way of release, each with what it is about; nothing when there is nothing. */
export const InTheWay = ({ release: { inTheWay } }: ReleaseProps) => {
  const { t } = useWords();
  if (inTheWay.length === 0) return null;
  return (
    <Section name={t('hulls.inTheWay')}>
      <Table
        caption={t('hulls.toSettle')}
        columns={[
          { head: t('record.what'), cell: ({ detail }) => <Said text={detail} />, names: true },
          { head: t('record.part'), cell: ({ part }) => part ?? t('hulls.wholeHull'), class: 'n' },
          { head: t('record.layer'), cell: ({ layer }) => layer ?? '–', class: 'n' },
        ]}
        rows={inTheWay}
      />
    </Section>
  );
};
