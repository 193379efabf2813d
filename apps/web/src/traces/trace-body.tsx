import type { TraceGraph } from '@hull-record/contracts';
import { RecomputingNote } from '../asked/recomputing-note.js';
import { BoundedTable } from '../record/bounded-table.js';
import { saveCsv } from '../record/save-csv.js';
import { Button } from '../ui/button.js';
import { Later } from '../ui/later.js';
import { Fold } from '../ui/fold.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { csvOf } from './csv-of.js';
import { NodeTable } from './node-table.js';
import { sentenceOf } from './sentence-of.js';
import { TraceDrawing } from './trace-drawing.js';

interface TraceBodyProps {
  readonly graph: TraceGraph;
  readonly picked: string;
  readonly onPick: (code: string) => void;
}

/** A trace: what it says in a sentence, the picture, the table beside it and all its ways. */
export const TraceBody = ({ graph, picked, onPick }: TraceBodyProps) => {
  const words = useWords();
  const { t } = words;
  const said = sentenceOf(graph, words);
  const suspect = graph.of === 'lot' && ['held', 'rejected'].includes(graph.nodes[0]?.state ?? '');
  return (
    <>
      <RecomputingNote of={graph.recomputing} />
      <p className="lead">{said}</p>
      {graph.leftOut === null ? null : <p className="b">{t('traces.leftOut', graph.leftOut)}</p>}
      <div className="picture-and-table">
        <div className="picture">
          <Later>
            <TraceDrawing graph={graph} picked={picked} onPick={onPick} words={said} suspect={suspect} />
          </Later>
          <p className="note soft">
            {t(graph.of === 'lot' ? 'traces.widthsOfLot' : 'traces.widthsOfHulls')} <Said text={graph.assumes} />
          </p>
        </div>
        <div>
          <Later>
            <Later>
              <NodeTable graph={graph} picked={picked} onPick={onPick} />
            </Later>
          </Later>
          <p className="more">
            <Button onPress={() => saveCsv(`trace-${graph.codes.join('-')}`, csvOf(graph))}>{t('traces.csv')}</Button>
          </p>
        </div>
      </div>
      <Fold summary={t('traces.waysTable', { count: graph.links.length })}>
        <Ways graph={graph} />
      </Fold>
    </>
  );
};

const Ways = ({ graph: { nodes, links } }: { readonly graph: TraceGraph }) => {
  const { t, mass } = useWords();
  const codes = new Map(nodes.map(({ id, code }) => [id, code]));
  return (
    <BoundedTable
      what={t('traces.ways')}
      caption={t('traces.waysCaption')}
      columns={[
        { head: t('traces.from'), cell: ({ from }) => codes.get(from), names: true, class: 'n' },
        { head: t('traces.into'), cell: ({ to }) => codes.get(to), class: 'n' },
        { head: t('traces.kg'), cell: ({ kg }) => mass(kg), class: 'r' },
      ]}
      rows={[...links].sort((a, b) => b.kg - a.kg)}
    />
  );
};
