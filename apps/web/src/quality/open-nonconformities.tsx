import type { NonconformityView } from '@hull-record/contracts';
import { useInfiniteQuery } from '@tanstack/react-query';
import { openNonconformitiesQuery } from '../api/queries-of-quality.js';
import { useMay } from '../api/use-may.js';
import { PagedTable } from '../asked/paged-table.js';
import { HullLink } from '../record/links.js';
import { Empty } from '../ui/page.js';
import { Day } from '../words/moments.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { DecideLink } from './decide-link.js';

/** What was done against a rule and is not closed: by a concession, or by rework that was inspected. */
export const OpenNonconformities = () => {
  const { t } = useWords();
  const query = useInfiniteQuery(openNonconformitiesQuery);
  return (
    <PagedTable
      what={t('quality.nonconformitiesWhat')}
      caption={t('quality.nonconformitiesCaption')}
      columns={[
        { head: t('record.what'), cell: ({ detail }) => <Said text={detail} />, names: true },
        {
          head: t('record.hull'),
          cell: ({ hull, part }) => (hull === null ? (part ?? '–') : <HullLink to={hull} />),
          class: 'n',
        },
        {
          head: t('quality.wentOn'),
          cell: ({ goOn }) =>
            goOn === null ? (
              '–'
            ) : (
              <>
                {goOn.by}: <Said text={goOn.reason} />
              </>
            ),
        },
        { head: t('record.since'), cell: ({ happenedAt }) => <Day at={happenedAt} /> },
        {
          head: t('quality.disposition'),
          cell: ({ disposition }) => (disposition === null ? '–' : <Term word={disposition} />),
        },
        { head: t('quality.toDo'), cell: (row) => <ToDo of={row} /> },
      ]}
      query={query}
      empty={<Empty>{t('quality.noNonconformities')}</Empty>}
    />
  );
};

const ToDo = ({ of: { id, detail, disposition, dispositionId } }: { readonly of: NonconformityView }) => {
  const { t } = useWords();
  const may = useMay();
  if (dispositionId !== null && (disposition === 'rework' || disposition === 'repair'))
    return may('recordRework') ? (
      <DecideLink about={dispositionId} act="rework" name={detail} words={t('quality.inspect')} />
    ) : (
      t('quality.inspect')
    );
  if (!may('dispose')) return t('quality.for.disposition');
  return <DecideLink about={id} act="nonconformity" name={detail} words={t('quality.for.disposition')} />;
};
