import { useInfiniteQuery } from '@tanstack/react-query';
import type { SharedLot } from '@hull-record/contracts';
import { sharedLotsQuery } from '../api/queries.js';
import { FilterForm } from '../asked/filter-form.js';
import { PagedTable } from '../asked/paged-table.js';
import { LotLink } from '../record/links.js';
import { Empty } from '../ui/page.js';
import type { Column } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import { numbersIn } from './numbers-in.js';

interface SharedLotsProps {
  /** The hulls in the address, parted by commas. */
  readonly asked: string;
  readonly onAsked: (asked: string) => void;
}

/** Asks which lots some hulls share. Numbers may be parted by commas, semicolons or lines. */
export const SharedLots = ({ asked, onAsked }: SharedLotsProps) => {
  const { t } = useWords();
  const hulls = numbersIn(asked);
  const query = useInfiniteQuery({ ...sharedLotsQuery(hulls), enabled: hulls.length > 0 });
  const columns = useColumns(hulls.length);
  return (
    <>
      <FilterForm
        button={t('search.showShared')}
        fields={[
          {
            name: 'hulls',
            label: t('search.numbers'),
            hint: t('search.numbersHint'),
            kind: 'lines',
            pointer: '/hulls',
          },
        ]}
        values={{ hulls: hulls.join('\n') }}
        onChosen={(chosen) => onAsked(numbersIn(chosen.hulls).join(','))}
        error={query.error}
      />
      {hulls.length === 0 ? (
        <Empty>{t('search.enterHulls')}</Empty>
      ) : (
        <PagedTable
          what={t('search.sharedLots')}
          caption={t('search.heldBy', { count: hulls.length })}
          columns={columns}
          query={query}
          empty={<Empty>{t('search.noShared')}</Empty>}
          note={t('search.note')}
        />
      )}
    </>
  );
};

const useColumns = (asked: number): readonly Column<SharedLot>[] => {
  const { t, term } = useWords();
  return [
    { head: t('record.lot'), cell: ({ lot }) => <LotLink to={lot} />, names: true, class: 'n' },
    {
      head: t('record.material'),
      cell: ({ material, role }) =>
        t('record.materialOf', { material: material ?? t('record.unknown'), role: term(role) }),
    },
    { head: t('record.supplier'), cell: ({ supplier }) => supplier ?? '–' },
    { head: t('record.supplierLot'), cell: ({ supplierLot }) => supplierLot ?? '–', class: 'n' },
    {
      head: t('search.ofThese'),
      cell: ({ ofThese }) => t('record.madeOf', { made: ofThese, all: asked }),
      class: 'r',
    },
    { head: t('search.ofOthers'), cell: ({ ofOthers }) => String(ofOthers), class: 'r' },
  ];
};
