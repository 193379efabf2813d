import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { TraceGraph } from '@hull-record/contracts';
import { paperPath } from '../api/ask.js';
import { hullTraceQuery } from '../api/queries-of-traces.js';
import { Answer } from '../asked/answer.js';
import { FilterForm } from '../asked/filter-form.js';
import { HullLink } from '../record/links.js';
import { Whereabouts } from '../record/whereabouts.js';
import { Empty, Facts, Page } from '../ui/page.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { TraceBody } from './trace-body.js';

const route = getRouteApi('/trace/hulls/$number');

/** Where what is in one or some hulls came from. */
export const HullTracePage = () => {
  const { t } = useWords();
  const { number } = route.useParams();
  const { also = '', pick = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const query = useQuery(hullTraceQuery(number, also));
  const name = also === '' ? number : `${number}, ${also.split(',').join(', ')}`;
  return (
    <Page title={t('traces.titleOf', { of: name })} kind={t('traces.whereFrom')} name={name}>
      <FilterForm
        button={t('app.show')}
        fields={[{ name: 'also', label: t('traces.also'), hint: t('traces.alsoHint'), kind: 'text', pointer: '/also' }]}
        values={{ also }}
        onChosen={(chosen) => void navigate({ search: chosen, replace: true })}
        error={query.error}
      />
      <Answer what={t('traces.ofThis', { of: name })} query={query} notThere={<NotThere number={number} />}>
        {(graph) => (
          <>
            <Head
              graph={graph}
              paper={paperPath('/api/hulls/:number/trace.pdf', { number }, also === '' ? {} : { also })}
            />
            <TraceBody
              graph={graph}
              picked={pick}
              onPick={(code) => void navigate({ search: { also, pick: code }, replace: true, resetScroll: false })}
            />
          </>
        )}
      </Answer>
    </Page>
  );
};

const Head = ({ graph: { nodes }, paper }: { readonly graph: TraceGraph; readonly paper: string }) => {
  const { t } = useWords();
  return (
    <Facts
      rows={[
        ...nodes
          .filter(({ kind }) => kind === 'hull')
          .map(
            ({ code, now }) =>
              [
                code,
                <>
                  <HullLink to={code} /> {now === null ? null : <Whereabouts now={now} />}
                </>,
              ] as const,
          ),
        [t('traces.drawn'), <a href={paper}>{t('traces.pdf')}</a>],
      ]}
    />
  );
};

const NotThere = ({ number }: { readonly number: string }) => (
  <Empty>
    <Text of="traces.noHull" with={{ number, hulls: (inside) => <Link to="/hulls">{inside}</Link> }} />
  </Empty>
);
