import type { OtherExposure } from '@hull-record/contracts';
import { BoundedTable } from '../../record/bounded-table.js';
import type { Column } from '../../ui/table.js';
import { useWords } from '../../words/use-words.js';
import { Drawing } from './drawing.js';
import { chance, ratioWords } from './figures.js';
import { ratioScale, type Scale } from './scale.js';

/** The family tells rows of one name apart: a lot is a class in each kind of layer that it is in. */
type Row = OtherExposure;

interface ForestProps {
  readonly rows: readonly Row[];
  readonly tests: number;
  readonly caption: string;
  /** What a row is. */
  readonly words: string;
}

const ROW = 40;
const [LEFT, RIGHT, WIDTH, TOP] = [270, 250, 870, 44];
/** So many rows are drawn; all of them are in the table. */
const DRAWN = 12;
const NAMED = 30;
const SAID = 40;

/** Claims observed over those expected, each with its interval; the line at 1 is "as many as expected". */
export const Forest = ({ rows, tests, caption, words: what }: ForestProps) => {
  const words = useWords();
  const { t } = words;
  const columns = useRowColumns();
  const drawn = rows.slice(0, DRAWN);
  const [first] = rows;
  if (first === undefined) return <p>{t('cases.nothingCompared')}</p>;
  const values = drawn.flatMap(({ ratio: { ratio, lower, upper } }) => [ratio, lower, upper]);
  const scale = ratioScale(
    values.flatMap((value) => value ?? []),
    LEFT,
    WIDTH - RIGHT,
  );
  const foot = TOP + drawn.length * ROW;
  const said = t('cases.forestSays', {
    what,
    tests,
    first: first.named,
    observed: first.observed,
    hulls: first.hulls,
    expected: words.figure(first.expected, 3),
    ratio: ratioWords(first.ratio, words),
    q: chance(first.q, words),
  });
  return (
    <Drawing
      words={said}
      width={WIDTH}
      height={foot + 12}
      table={<BoundedTable what={t('cases.rows')} caption={caption} columns={columns} rows={rows} />}
      not={rows.length > DRAWN ? t('cases.firstDrawn', { drawn: DRAWN, all: rows.length }) : undefined}
    >
      <Axis scale={scale} foot={foot} />
      {drawn.map((row, i) => (
        <Line key={`${row.family} ${row.named}`} row={row} y={TOP + (i + 0.5) * ROW} scale={scale} />
      ))}
    </Drawing>
  );
};

const Axis = ({ scale, foot }: { readonly scale: Scale; readonly foot: number }) => {
  const { t, figure } = useWords();
  return (
    <>
      <text x={LEFT} y={14}>
        {t('cases.observedOverExpected')}
      </text>
      {scale.ticks.map((tick) => (
        <g key={tick}>
          <path className={tick === 1 ? 'as-expected' : 'guide'} d={`M${scale.at(tick)} ${TOP - 4}V${foot}`} />
          <text className="n" x={scale.at(tick)} y={TOP - 10} textAnchor="middle">
            {figure(tick)}
          </text>
        </g>
      ))}
    </>
  );
};

interface LineProps {
  readonly row: Row;
  readonly y: number;
  readonly scale: Scale;
}

/** A side without a bound ends in an arrow. */
const Line = ({ row: { named, family, hulls, observed, expected, ratio, q }, y, scale }: LineProps) => {
  const words = useWords();
  const from = scale.at(ratio.lower ?? 0);
  const to = ratio.upper === null ? WIDTH - RIGHT : scale.at(ratio.upper);
  const at = scale.at(ratio.ratio ?? 0);
  return (
    <g>
      <text className="n" x={LEFT - 12} y={y - 2} textAnchor="end">
        {cut(named, NAMED)}
      </text>
      <text className="second" x={LEFT - 12} y={y + 13} textAnchor="end">
        {cut(words.term(family), SAID)}
      </text>
      <path className="interval" d={`M${from} ${y}H${to}M${from} ${y - 5}V${y + 5}`} />
      <path
        className="interval"
        d={ratio.upper === null ? `M${to - 6} ${y - 5}L${to} ${y}L${to - 6} ${y + 5}` : `M${to} ${y - 5}V${y + 5}`}
      />
      {ratio.ratio === null ? null : <path className="estimate" d={`M${at - 5} ${y - 5}h10v10h-10Z`} />}
      <text className="n" x={WIDTH - RIGHT + 10} y={y + 4}>
        {words.t('cases.rowSays', { observed, hulls, expected: words.figure(expected, 2), q: chance(q, words) })}
      </text>
    </g>
  );
};

const cut = (text: string, most: number): string => (text.length > most ? `${text.slice(0, most - 1)}…` : text);

const useRowColumns = (): readonly Column<Row>[] => {
  const words = useWords();
  const { t, figure, term } = words;
  return [
    { head: t('cases.named'), cell: ({ named }) => named, names: true, class: 'n' },
    { head: t('cases.family'), cell: ({ family }) => term(family) },
    { head: t('cases.hullsExposed'), cell: ({ hulls }) => hulls, class: 'r n' },
    { head: t('cases.observed'), cell: ({ observed }) => observed, class: 'r n' },
    { head: t('cases.expected'), cell: ({ expected }) => figure(expected), class: 'r n' },
    { head: t('cases.ratio'), cell: ({ ratio }) => ratioWords(ratio, words) },
    { head: t('cases.odds'), cell: ({ hazardOdds }) => ratioWords(hazardOdds, words) },
    { head: t('cases.p'), cell: ({ p }) => chance(p, words), class: 'r n' },
    { head: t('cases.q'), cell: ({ q }) => chance(q, words), class: 'r n' },
    { head: t('cases.mixed'), cell: ({ mixedWithAge }) => (mixedWithAge ? t('cases.isMixed') : '–') },
  ];
};
