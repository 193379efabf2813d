import type { NoticeView } from '@hull-record/contracts';
import { mark } from '../marks/mark.js';
import { Table, type Column } from '../ui/table.js';
import { CalendarDay } from '../words/moments.js';
import { useWords } from '../words/use-words.js';

type DueDate = NoticeView['dates'][number];

/** The dates that the law sets for a notice, with what is late in words first. */
export const DueDates = ({ dates }: { readonly dates: readonly DueDate[] }) => {
  const { t, term } = useWords();
  const columns: readonly Column<DueDate>[] = [
    { head: t('holds.dueWhat'), cell: ({ what }) => term(what), names: true },
    { head: t('holds.dueOn'), cell: ({ dueOn }) => (dueOn === null ? '–' : <CalendarDay at={dueOn} />) },
    { head: t('holds.dueState'), cell: (date) => <State of={date} /> },
    { head: t('holds.dueSource'), cell: ({ source }) => <span className="wraps note">{source}</span> },
  ];
  return <Table caption={t('holds.dueDates')} columns={columns} rows={dates} />;
};

const State = ({ of: { state, days, doneOn } }: { readonly of: DueDate }) => {
  const { t, term } = useWords();
  if (state === 'late') return mark('outside', t('holds.lateBy', { days: -(days ?? 0) }));
  if (state === 'due') return mark('near', t('holds.dueIn', { days: days ?? 0 }));
  return (
    <>
      {state === 'does not run' ? term(state) : mark(state === 'done late' ? 'outside' : 'made', term(state))}
      {doneOn === null ? null : (
        <>
          {' '}
          <CalendarDay at={doneOn} />
        </>
      )}
    </>
  );
};
