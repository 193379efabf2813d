import { useInfiniteQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { HeldHull, HoldView } from '@hull-record/contracts';
import { heldHullsQuery } from '../api/queries-of-holds.js';
import { PagedTable } from '../asked/paged-table.js';
import { HullLink } from '../record/links.js';
import { Joined } from '../ui/joined.js';
import { Empty } from '../ui/page.js';
import { Radios } from '../ui/radios.js';
import type { Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { DisposeHulls } from './dispose-hulls.js';

const WHICH = ['all', 'open', 'disposed', 'out'] as const;

/** The hulls of a hold, and what to say of them. */
export const HeldHulls = ({ hold }: { readonly hold: HoldView }) => {
  const { t } = useWords();
  const [which, setWhich] = useState<(typeof WHICH)[number]>('all');
  const query = useInfiniteQuery(heldHullsQuery(hold.id, { which, limit: '100' }));
  const open = (query.data?.pages ?? [])
    .flatMap(({ items }) => items)
    .filter(({ reached, disposed }) => reached && !disposed);
  return (
    <>
      <Radios
        label={t('holds.whichHulls')}
        value={which}
        options={WHICH.map((each) => [each, t(`holds.which.${each}`)])}
        onChange={setWhich}
      />
      <PagedTable
        what={t('holds.hullsAndParts')}
        caption={t('holds.hullList')}
        columns={useColumns()}
        query={query}
        empty={<Empty>{t('holds.noSuchHulls')}</Empty>}
        note={t('holds.assumes')}
      />
      {hold.ended === null ? <DisposeHulls hold={hold.id} open={open} /> : null}
    </>
  );
};

const useColumns = (): readonly Column<HeldHull>[] => {
  const { t, term, percent } = useWords();
  const share = ({ share: of, possibly }: HeldHull): string => {
    if (possibly) return t('holds.possibly');
    return of === null ? '–' : percent(of);
  };
  return [
    {
      head: t('record.hull'),
      cell: ({ hull, part }) =>
        hull === null ? (
          <span className="wraps">{t('holds.inNoHull', { part: part ?? '' })}</span>
        ) : (
          <HullLink to={hull} />
        ),
      names: true,
      class: 'n',
    },
    { head: t('holds.share'), cell: share, class: 'r' },
    {
      head: t('holds.where'),
      cell: ({ state, dealer }) =>
        dealer === null ? term(state) : t('holds.stateAndDealer', { state: term(state), dealer }),
    },
    { head: t('holds.leftOn'), cell: ({ leftAt }) => (leftAt === null ? t('holds.notLeft') : <Day at={leftAt} />) },
    {
      head: t('holds.when'),
      cell: ({ reached, atHold }) => {
        if (!reached) return t('holds.reachedNoMore');
        return atHold === null ? t('holds.cameSince') : t('holds.wasThere', { state: term(atHold.state) });
      },
    },
    { head: t('holds.disposition'), cell: (row) => <Dispositions of={row} /> },
  ];
};

const Dispositions = ({ of: { said, disposed, reached } }: { readonly of: HeldHull }) => {
  const { t, term } = useWords();
  if (said.length === 0) return reached && !disposed ? t('holds.open') : '–';
  return (
    <Joined by="; ">
      {said.map(({ id, what, note, evidence, by, happenedAt }) => (
        <span key={id} className="wraps">
          <strong>{term(what)}</strong> <Day at={happenedAt} /> <span className="n">{by}</span>
          {note === null ? null : (
            <>
              {' '}
              <Said text={note} />
            </>
          )}
          {evidence === null ? null : (
            <>
              {' '}
              {t('holds.evidenceIs')} <Said text={evidence} />
            </>
          )}
        </span>
      ))}
    </Joined>
  );
};
