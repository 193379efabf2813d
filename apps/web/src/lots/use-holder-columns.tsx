import type { ReachedHull } from '@hull-record/contracts';
import { HullLink } from '../record/links.js';
import { placeName } from '../record/place-name.js';
import { Whereabouts } from '../record/whereabouts.js';
import { Joined } from '../ui/joined.js';
import type { Column } from '../ui/table.js';
import { Days } from '../words/moments.js';
import { useWords } from '../words/use-words.js';

/** The hulls and parts that hold a lot: how much, where in them, since when, and where they are. */
export const useHolderColumns = (): readonly Column<ReachedHull>[] => {
  const { t, term, mass, percent } = useWords();
  const unsaid = (possibly: boolean) => (
    <span className="wraps">{possibly ? t('lots.possibly') : t('lots.trace')}</span>
  );
  return [
    { head: t('record.hull'), cell: (row) => <Holder row={row} />, names: true, class: 'n' },
    { head: t('lots.ofThisLot'), cell: ({ kg, possibly }) => (kg === null ? unsaid(possibly) : mass(kg)), class: 'r' },
    { head: t('record.basis'), cell: ({ basis }) => (basis === null ? '–' : term(basis)) },
    {
      head: t('lots.largestShare'),
      cell: ({ largestLayerShare: share, possibly }) => {
        if (possibly) return t('record.notKnown');
        return share === null ? unsaid(false) : percent(share);
      },
      class: 'r',
    },
    { head: t('lots.whereInIt'), cell: ({ parts }) => <Places parts={parts} /> },
    {
      head: t('lots.usedWhen'),
      cell: ({ firstAt, lastAt }) => (firstAt === null || lastAt === null ? '–' : <Days from={firstAt} to={lastAt} />),
    },
    { head: t('lots.whereNow'), cell: ({ now }) => (now === null ? '–' : <Whereabouts now={now} />) },
  ];
};

const Holder = ({ row: { hull, parts } }: { readonly row: ReachedHull }) => {
  const { t } = useWords();
  if (hull !== null) return <HullLink to={hull} />;
  return <span className="wraps">{t('lots.inNoHull', { parts: parts.map(({ part }) => part).join(', ') })}</span>;
};

const Places = ({ parts }: Pick<ReachedHull, 'parts'>) => {
  const { term } = useWords();
  return (
    <Joined by="; ">
      {parts.map(({ part, places }) => (
        <span key={part}>
          <span className="n">{part}</span>
          {` ${places.map(({ place, kind }) => placeName(kind, place, term)).join(', ')}`}
        </span>
      ))}
    </Joined>
  );
};
