import type { RouteName, WaitingView } from '@hull-record/contracts';
import { useMay } from '../api/use-may.js';
import { HullLink } from '../record/links.js';
import type { Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { DecideLink } from './decide-link.js';

const ROUTES: Readonly<Record<WaitingView['for'], RouteName>> = {
  disposition: 'dispose',
  answer: 'answerAsk',
  acceptance: 'judgeRepair',
};

/** What waits: what it is, where, since when, and what is to be said of it by who may. */
export const useWaitingColumns = (): readonly Column<WaitingView>[] => {
  const { t, kind, term } = useWords();
  const may = useMay();
  const nameOf = ({ of, what }: WaitingView): string => (of === 'defect' ? kind(what) : `${term(of)}: ${term(what)}`);
  return [
    { head: t('record.what'), cell: (row) => nameOf(row), names: true },
    { head: t('quality.detail'), cell: ({ detail }) => <Said text={detail} /> },
    {
      head: t('record.hull'),
      cell: ({ hull, part }) => (hull === null ? (part ?? '–') : <HullLink to={hull} />),
      class: 'n',
    },
    { head: t('record.layer'), cell: ({ layer }) => layer ?? '–', class: 'n' },
    { head: t('record.since'), cell: ({ happenedAt }) => <Day at={happenedAt} /> },
    {
      head: t('quality.toDo'),
      cell: (row) => {
        const words = t(`quality.for.${row.for}`);
        if (!may(ROUTES[row.for])) return words;
        const act = row.for === 'disposition' ? row.of : row.for;
        const where = [row.hull ?? row.part, row.layer].filter((each) => each !== null).join(' ');
        return (
          <DecideLink
            about={row.id}
            act={act}
            name={`${nameOf(row)}, ${row.detail}${where && `, ${where}`}`}
            words={words}
          />
        );
      },
    },
  ];
};
