import { useInfiniteQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { MappedDefect } from '@hull-record/contracts';
import type { QueryOf } from '../api/contract.js';
import { mappedDefectsQuery } from '../api/queries-of-map.js';
import { PagedTable } from '../asked/paged-table.js';
import { DefectMark } from '../marks/defect-mark.js';
import { placeWords, sizeWords } from '../record/defect-words.js';
import { HullLink } from '../record/links.js';
import { Empty } from '../ui/page.js';
import type { Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { useWords } from '../words/use-words.js';

interface MapListProps {
  readonly model: string;
  readonly filter: QueryOf<'/api/models/:model/defects'>;
  readonly caption: string;
}

/** The defects on the map, or in the area that was chosen, the newest first. */
export const MapList = ({ model, filter, caption }: MapListProps) => {
  const { t } = useWords();
  const query = useInfiniteQuery(mappedDefectsQuery(model, { ...filter, limit: '25' }));
  return (
    <PagedTable
      what={t('manyMap.defects')}
      caption={caption}
      columns={useColumns()}
      query={query}
      empty={<Empty>{t('manyMap.noneThere')}</Empty>}
    />
  );
};

const useColumns = (): readonly Column<MappedDefect>[] => {
  const words = useWords();
  const { t, term, kind } = words;
  return [
    {
      head: t('record.hull'),
      cell: ({ hull, part }) => (hull === null ? part : <HullLink to={hull} />),
      names: true,
      class: 'n',
    },
    {
      head: t('record.defect'),
      cell: (defect) => (
        <>
          <Link to="/defects/$defect" params={{ defect: defect.id }}>
            {`${defect.mark} ${kind(defect.kind)}`}
          </Link>{' '}
          {sizeWords(defect, words)}
        </>
      ),
    },
    { head: t('record.layer'), cell: ({ layer }) => layer ?? t('record.notKnown'), class: 'n' },
    { head: t('record.place'), cell: (defect) => placeWords(defect, words) },
    { head: t('manyMap.mold'), cell: ({ mold }) => mold, class: 'n' },
    { head: t('record.found'), cell: ({ happenedAt }) => <Day at={happenedAt} /> },
    { head: t('record.outcome'), cell: ({ state }) => <DefectMark state={state}>{term(state)}</DefectMark> },
  ];
};
