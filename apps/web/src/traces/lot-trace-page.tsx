import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { TraceGraph } from '@hull-record/contracts';
import { paperPath } from '../api/ask.js';
import { lotTraceQuery } from '../api/queries-of-traces.js';
import { Answer } from '../asked/answer.js';
import { LotState } from '../marks/lot-state.js';
import { LotLink } from '../record/links.js';
import { Empty, Facts, Page } from '../ui/page.js';
import { Day } from '../words/moments.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { TraceBody } from './trace-body.js';

const route = getRouteApi('/trace/lots/$lot');

/** Where a lot went. */
export const LotTracePage = () => {
  const { t } = useWords();
  const { lot } = route.useParams();
  const { pick = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const query = useQuery(lotTraceQuery(lot));
  return (
    <Page title={t('traces.titleOf', { of: lot })} kind={t('traces.whereTo')} name={lot}>
      <Answer what={t('traces.ofThis', { of: lot })} query={query} notThere={<NotThere lot={lot} />}>
        {(graph) => (
          <>
            <Head graph={graph} />
            <TraceBody
              graph={graph}
              picked={pick}
              onPick={(code) => void navigate({ search: { pick: code }, replace: true, resetScroll: false })}
            />
          </>
        )}
      </Answer>
    </Page>
  );
};

const Head = ({ graph: { nodes } }: { readonly graph: TraceGraph }) => {
  const { t, term, mass } = useWords();
  const [lot] = nodes;
  if (lot === undefined) return null;
  return (
    <Facts
      rows={[
        [t('record.lot'), <LotLink to={lot.code} />],
        [t('record.material'), lot.material ?? (lot.role === null ? null : term(lot.role))],
        [t('record.supplier'), lot.supplier],
        [t('record.supplierLot'), lot.supplierLot],
        [t('record.amount'), lot.kg === null ? null : mass(lot.kg)],
        [t('record.state'), lot.state === null ? null : <LotState state={lot.state} />],
        [t('record.since'), lot.at === null ? null : <Day at={lot.at} />],
        [
          t('traces.paper'),
          <a href={paperPath('/api/lots/:lot/report.pdf', { lot: lot.code })}>{t('traces.report')}</a>,
        ],
        [t('traces.drawn'), <a href={paperPath('/api/lots/:lot/trace.pdf', { lot: lot.code })}>{t('traces.pdf')}</a>],
      ]}
    />
  );
};

const NotThere = ({ lot }: { readonly lot: string }) => (
  <Empty>
    <Text of="traces.noLot" with={{ lot, lots: (inside) => <Link to="/lots">{inside}</Link> }} />
  </Empty>
);
