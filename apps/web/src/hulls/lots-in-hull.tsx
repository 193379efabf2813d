import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { LotInHull } from '@hull-record/contracts';
import { hullLotsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { RecomputingNote } from '../asked/recomputing-note.js';
import { LotState } from '../marks/lot-state.js';
import { Folded } from '../record/folded.js';
import { LotLink } from '../record/links.js';
import { Paths } from '../record/paths.js';
import { placeName } from '../record/place-name.js';
import { Empty, Section } from '../ui/page.js';
import { Table, type Column } from '../ui/table.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** The received lots in a hull, with where and by which way each came there. */
export const LotsInHull = ({ number }: { readonly number: string }) => {
  const { t } = useWords();
  const query = useQuery(hullLotsQuery(number));
  const columns = useColumns();
  return (
    <Section name={t('hulls.lotsIn')}>
      <p>
        <Link to="/trace/hulls/$number" params={{ number }}>
          {t('record.traceHull')}
        </Link>
      </p>
      <Answer what={t('hulls.lotsOf', { number })} query={query}>
        {({ lots, assumes, recomputing }) =>
          lots.length === 0 ? (
            <Empty>{t('hulls.noLots')}</Empty>
          ) : (
            <>
              <RecomputingNote of={recomputing} />
              <Table caption={t('hulls.lotsCaption')} columns={columns} rows={lots} />
              <p className="note soft">
                <Said text={assumes} />
              </p>
            </>
          )
        }
      </Answer>
    </Section>
  );
};

const useColumns = (): readonly Column<LotInHull>[] => {
  const { t, term, mass, percent } = useWords();
  return [
    { head: t('record.lot'), cell: ({ lot }) => <LotLink to={lot} />, names: true, class: 'n' },
    {
      head: t('record.supplierLot'),
      cell: ({ supplierLot, supplier }) => (
        <>
          <span className="n">{supplierLot ?? '–'}</span>
          {supplier === null ? null : `, ${supplier}`}
        </>
      ),
    },
    {
      head: t('record.material'),
      cell: ({ material, role }) =>
        t('record.materialOf', { material: material ?? t('record.unknown'), role: term(role) }),
    },
    { head: t('record.state'), cell: ({ state }) => (state === null ? '–' : <LotState state={state} />) },
    { head: t('hulls.inAll'), cell: ({ kg }) => mass(kg), class: 'r' },
    { head: t('record.basis'), cell: ({ basis }) => term(basis) },
    { head: t('hulls.largestShare'), cell: ({ largestLayerShare }) => percent(largestLayerShare), class: 'r' },
    {
      head: t('hulls.whereAndHow'),
      cell: ({ places }) => (
        <Folded
          items={places.map((each, i) => (
            <Place key={i} of={each} />
          ))}
          atMost={3}
          more={(count) => t('hulls.morePlaces', { count })}
        />
      ),
    },
  ];
};

const Place = ({ of: { part, place, kind, kg, share, paths } }: { readonly of: LotInHull['places'][number] }) => {
  const { term, mass, percent } = useWords();
  const layer = kind === 'layer' ? `${term(kind)} ` : '';
  return (
    <>
      <span className="n">{part}</span>
      {` ${layer}${placeName(kind, place, term)}: ${mass(kg)}, ${percent(share)}, `}
      <span className="soft">
        <Paths paths={paths} />
      </span>
    </>
  );
};
