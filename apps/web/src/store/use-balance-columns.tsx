import type { LotOutOfBalance } from '@hull-record/contracts';
import { mark } from '../marks/mark.js';
import type { Column } from '../ui/table.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { StoreLotLink } from './store-lot-link.js';

/** Lots that do not balance: what came, where it went, and what is not accounted for. */
export const useBalanceColumns = (): readonly Column<LotOutOfBalance>[] => {
  const { t, mass, term } = useWords();
  return [
    { head: t('record.lot'), cell: ({ lot }) => <StoreLotLink to={lot} />, names: true, class: 'n' },
    { head: t('record.material'), cell: ({ material }) => material ?? '–' },
    { head: t('store.came'), cell: ({ receivedKg }) => mass(receivedKg), class: 'r' },
    { head: t('store.taken'), cell: ({ takenKg }) => mass(takenKg), class: 'r' },
    { head: t('store.lost'), cell: ({ lostKg }) => mass(lostKg), class: 'r' },
    { head: t('store.difference'), cell: ({ differenceKg }) => mass(differenceKg), class: 'r' },
    { head: t('store.left'), cell: ({ leftKg }) => mass(leftKg), class: 'r' },
    { head: t('record.basis'), cell: ({ basis }) => term(basis) },
    { head: t('store.verdict'), cell: ({ verdict }) => mark('near', <Term word={verdict} />) },
  ];
};
