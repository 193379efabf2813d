import type { LotListItem } from '@hull-record/contracts';
import { LotState } from '../marks/lot-state.js';
import type { Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { useWords } from '../words/use-words.js';
import { Link } from '@tanstack/react-router';

/** Lots as lists show them, each leading to its page or to what the store knows of it. */
export const useLotColumns = (to: '/lots/$lot' | '/store/lots/$lot' = '/lots/$lot'): readonly Column<LotListItem>[] => {
  const { t, term, amount } = useWords();
  return [
    {
      head: t('record.lot'),
      cell: ({ code: lot }) => (
        <Link to={to} params={{ lot }}>
          {lot}
        </Link>
      ),
      names: true,
      class: 'n',
    },
    {
      head: t('record.material'),
      cell: ({ materialName, origin }) => materialName ?? t(`record.origin.${origin}`),
    },
    { head: t('record.supplier'), cell: ({ supplier }) => supplier ?? '–' },
    { head: t('record.supplierLot'), cell: ({ supplierLot }) => supplierLot ?? '–', class: 'n' },
    { head: t('record.amount'), cell: ({ amount: of }) => amount(of), class: 'r' },
    { head: t('record.basis'), cell: ({ amount: { basis } }) => term(basis) },
    { head: t('record.state'), cell: ({ state, holds }) => <LotState state={state} holds={holds} /> },
    { head: t('record.since'), cell: ({ happenedAt }) => <Day at={happenedAt} /> },
  ];
};
