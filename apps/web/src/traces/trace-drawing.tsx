import type { TraceGraph } from '@hull-record/contracts';
import { useMemo, type KeyboardEvent, type MouseEvent } from 'react';
import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';
import { BAR, layOut, type Box } from './layout.js';
import { nodeAt, nodeBeside, pickOf, type Pick } from './pick.js';

interface TraceDrawingProps {
  readonly graph: TraceGraph;
  /** Code of the node that is picked. */
  readonly picked: string;
  readonly onPick: (code: string) => void;
  readonly words: string;
  /** A lot that is held or rejected shows in the slant of what is suspect. */
  readonly suspect: boolean;
}

/** Where material went: lots on the left, hulls on the right, widths by kilograms; what is picked stays, the rest fades. */
export const TraceDrawing = ({ graph, picked, onPick, words, suspect }: TraceDrawingProps) => {
  const { t } = useWords();
  const picture = useMemo(() => layOut(graph), [graph]);
  const id = graph.nodes.find(({ code }) => code === picked)?.id;
  const pick = useMemo(() => (id === undefined ? undefined : pickOf(id, graph.links)), [id, graph]);
  const choose = (node: string | undefined): void =>
    onPick(node === undefined || node === id ? '' : (picture.boxes.get(node)?.node.code ?? ''));
  const clicked = (event: MouseEvent<SVGSVGElement>): void => {
    const { left, top, width } = event.currentTarget.getBoundingClientRect();
    const scale = width / picture.width;
    choose(nodeAt(picture, (event.clientX - left) / scale, (event.clientY - top) / scale));
  };
  const keyPressed = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') onPick('');
    else if (event.key.startsWith('Arrow')) {
      const next = nodeBeside(picture, id, event.key);
      if (next !== undefined && next !== id) choose(next);
    } else return;
    event.preventDefault();
  };
  return (
    <>
      <p className="note soft" role="status">
        {id === undefined ? t('traces.keys') : <PickWords graph={graph} id={id} />}
      </p>
      <div className="trace" role="group" aria-label={t('traces.drawing')} tabIndex={0} onKeyDown={keyPressed}>
        <svg
          width={picture.width}
          height={picture.height}
          viewBox={`0 0 ${picture.width} ${picture.height}`}
          role="img"
          aria-label={words}
          onClick={clicked}
          className={`${pick ? 'picked' : 'whole'}${suspect ? ' suspect' : ''}`}
        >
          <SuspectHatch />
          {picture.columns.map(({ kind, x, count }) => (
            <text key={`${kind} ${x}`} className="b" x={x} y={14}>
              {t(`traces.column.${kind}`, { count })}
            </text>
          ))}
          <Ways picture={picture} pick={pick} />
          <Bars boxes={picture.boxes} pick={pick} />
          <Labels boxes={picture.boxes} pick={pick} />
        </svg>
      </div>
      {id === undefined ? null : (
        <p>
          <Button onPress={() => onPick('')}>{t('traces.showAll')}</Button>
        </p>
      )}
    </>
  );
};

/** Kilograms of a lot that is held or rejected. */
const SuspectHatch = () => (
  <defs>
    <pattern id="h-suspect" className="suspect-hatch" width="6" height="6" patternUnits="userSpaceOnUse">
      <rect width="6" height="6" />
      <path d="M0 6L6 0" />
    </pattern>
  </defs>
);

interface PartsProps {
  readonly boxes: ReadonlyMap<string, Box>;
  readonly pick: Pick | undefined;
}

type Ribbons = ReturnType<typeof layOut>['ribbons'];
const pathOf = (some: Ribbons, thin: boolean): string =>
  some
    .filter((ribbon) => ribbon.thin === thin)
    .map(({ d }) => d)
    .join('');

/**
 * All ribbons as two paths, wide and thin: thousands of them are no more nodes than one. What is picked is drawn over
 * them, so that the many stay as they are while they fade.
 */
const Ways = ({ picture, pick }: { readonly picture: ReturnType<typeof layOut>; readonly pick: Pick | undefined }) => {
  const { ribbons } = picture;
  const all = useMemo(() => [pathOf(ribbons, false), pathOf(ribbons, true)] as const, [ribbons]);
  const picked = pick ? ribbons.filter(({ from, to }) => pick.hasWay(from, to)) : [];
  const fades = pick ? ' fades' : '';
  return (
    <>
      <path className={`ribbons${fades}`} d={all[0]} />
      <path className={`ribbons thin${fades}`} d={all[1]} />
      {pick === undefined ? null : (
        <>
          <path className="ribbons" d={pathOf(picked, false)} />
          <path className="ribbons thin" d={pathOf(picked, true)} />
        </>
      )}
    </>
  );
};

const Bars = ({ boxes, pick }: PartsProps) => {
  const all = useMemo(() => [...boxes.values()], [boxes]);
  const path = (some: readonly Box[]): string => some.map(barOf).join('');
  const every = useMemo(
    () =>
      all
        .filter(({ node }) => !node.possibly)
        .map(barOf)
        .join(''),
    [all],
  );
  return (
    <>
      <path className={pick ? 'bars fades' : 'bars'} d={every} />
      {pick === undefined ? null : (
        <path className="bars" d={path(all.filter(({ node }) => !node.possibly && pick.has(node.id)))} />
      )}
      <path className="bars possibly" d={path(all.filter(({ node }) => node.possibly))} />
      <path className="bars here" d={path(all.filter(({ node }) => node.id === pick?.id))} />
    </>
  );
};

/** A lot is a bar; a hull is one with a bow. */
const barOf = ({ node, x, y, bar, row }: Box): string => {
  const high = node.possibly ? Math.min(row, 14) : bar;
  const [top, end] = [y.toFixed(1), (y + high).toFixed(1)];
  if (node.kind === 'lot') return `M${x} ${top}H${x + BAR}V${end}H${x}Z`;
  const middle = (y + high / 2).toFixed(1);
  return `M${x} ${top}H${x + BAR - 5}L${x + BAR + 2} ${middle}L${x + BAR - 5} ${end}H${x}Z`;
};

const Labels = ({ boxes, pick }: PartsProps) => {
  const { t, mass } = useWords();
  // In a column with very many nodes only what is picked is named; a table names all.
  const named = [...boxes.values()].filter(({ lines, node }) => lines > 0 || node.id === pick?.id);
  return named.map(({ node, x, y, lines }) => {
    const kg = node.kg === null ? t('traces.possibly') : mass(node.kg, 3);
    const faded = pick === undefined || pick.has(node.id) ? '' : ' fades';
    return (
      <text key={node.id} className={`label${faded}`} x={x + BAR + 6} y={y + 11}>
        <tspan className="n b">{node.code}</tspan>
        <tspan className="soft" {...(lines === 2 ? { x: x + BAR + 6, dy: 15 } : { dx: 6 })}>
          {kg}
        </tspan>
      </text>
    );
  });
};

/** What is picked, in words: what came to it and where it went. */
const PickWords = ({ graph, id }: { readonly graph: TraceGraph; readonly id: string }) => {
  const { t, mass } = useWords();
  const node = graph.nodes.find((each) => each.id === id);
  const into = graph.links.filter(({ to }) => to === id).length;
  const out = graph.links.filter(({ from }) => from === id).length;
  if (node === undefined) return null;
  const kg = node.kg === null ? t('traces.possibly') : mass(node.kg);
  return <b>{t('traces.picked', { code: node.code, kg, into, out })}</b>;
};
