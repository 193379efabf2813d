import type { LotListItem } from '@hull-record/contracts';
import { LotState } from '../marks/lot-state.js';
import type { Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { useWords } from '../words/use-words.js';
import { LotLink } from './links.js';

/** Lots as lists show them. */
export const useLotColumns = (): readonly Column<LotListItem>[] => {
  const { t, term, amount } = useWords();
  return [
    { head: t('record.lot'), cell: ({ code }) => <LotLink to={code} />, names: true, class: 'n' },
    {
      head: t('record.material'),
      cell: ({ materialName, origin }) => materialName ?? t(`record.origin.${origin}`),
    },
    { head: t('record.supplier'), cell: ({ supplier }) => supplier ?? '–' },
    { head: t('record.supplierLot'), cell: ({ supplierLot }) => supplierLot ?? '–', class: 'n' },
    { head: t('record.amount'), cell: ({ amount: of }) => amount(of), class: 'r' },
    { head: t('record.basis'), cell: ({ amount: { basis } }) => term(basis) },
    { head: t('record.state'), cell: ({ state }) => <LotState state={state} /> },
    { head: t('record.since'), cell: ({ happenedAt }) => <Day at={happenedAt} /> },
  ];
};
