import type { TraceGraph, TraceNode } from '@hull-record/contracts';
import { LotState } from '../marks/lot-state.js';
import { BoundedTable } from '../record/bounded-table.js';
import { HullLink, LotLink } from '../record/links.js';
import { Whereabouts } from '../record/whereabouts.js';
import { Button } from '../ui/button.js';
import { Empty } from '../ui/page.js';
import type { Column } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import { pickOf } from './pick.js';

interface NodeTableProps {
  readonly graph: TraceGraph;
  readonly picked: string;
  readonly onPick: (code: string) => void;
}

/** The end of a trace as a table: from a lot its hulls, from hulls the lots behind them; of what is picked, its own. */
export const NodeTable = ({ graph, picked, onPick }: NodeTableProps) => {
  const { t } = useWords();
  const columns = useColumns(graph.of, picked, onPick);
  const id = graph.nodes.find(({ code }) => code === picked)?.id;
  const pick = id === undefined ? undefined : pickOf(id, graph.links);
  const ends = graph.nodes.filter(({ kind, origin }) =>
    graph.of === 'lot' ? kind !== 'lot' : origin === 'received' || origin === 'unidentified',
  );
  const rows = ends.filter((node) => pick?.has(node.id) ?? true);
  const what = graph.of === 'lot' ? t('traces.hullsAndParts') : t('app.lots');
  if (rows.length === 0) return <Empty>{t(graph.of === 'lot' ? 'traces.noHulls' : 'traces.noLots')}</Empty>;
  return (
    <BoundedTable
      what={what}
      caption={pick === undefined ? t('traces.tableOf', { what }) : t('traces.tableOfPicked', { what, picked })}
      columns={columns}
      rows={rows}
    />
  );
};

const useColumns = (
  of: TraceGraph['of'],
  picked: string,
  onPick: (code: string) => void,
): readonly Column<TraceNode>[] => {
  const { t, term, mass, percent } = useWords();
  const figures: readonly Column<TraceNode>[] = [
    { head: t('traces.kg'), cell: ({ kg }) => (kg === null ? t('traces.possibly') : mass(kg)), class: 'r' },
    { head: t('traces.share'), cell: ({ share }) => (share === null ? '–' : percent(share)), class: 'r' },
    { head: t('record.basis'), cell: ({ basis }) => (basis === null ? '–' : term(basis)) },
  ];
  const pick = (code: string) => (
    <Button className="in-text" label={t('traces.pick', { code })} onPress={() => onPick(code === picked ? '' : code)}>
      {t('traces.pickShort')}
    </Button>
  );
  if (of === 'lot')
    return [
      {
        head: t('record.hull'),
        cell: (node) => (
          <>
            <Owner node={node} /> {pick(node.code)}
          </>
        ),
        names: true,
      },
      ...figures,
      { head: t('record.now'), cell: ({ now }) => (now === null ? '–' : <Whereabouts now={now} />) },
    ];
  return [
    {
      head: t('record.lot'),
      cell: ({ code }) => (
        <>
          <span className="n">
            <LotLink to={code} />
          </span>{' '}
          {pick(code)}
        </>
      ),
      names: true,
    },
    { head: t('record.material'), cell: ({ material, role }) => material ?? (role === null ? '–' : term(role)) },
    ...figures,
    { head: t('record.state'), cell: ({ state }) => (state === null ? '–' : <LotState state={state} />) },
  ];
};

const Owner = ({ node: { kind, code } }: { readonly node: TraceNode }) => {
  const { t } = useWords();
  return kind === 'hull' ? (
    <HullLink to={code} />
  ) : (
    <span className="wraps">{t('traces.inNoHull', { part: code })}</span>
  );
};
