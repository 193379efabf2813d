import type { ReadingView } from '@hull-record/contracts';
import { unitSign } from '../words/figures.js';
import { useWords } from '../words/use-words.js';
import { plotOf, type Plot, type PlotPoint } from './plot-scale.js';

const WIDTH = 370;
const HEIGHT = 130;
const LEFT = 44;
const RIGHT = 90;
const [TOP, FOOT] = [12, 22];

/** The readings of one kind, spot by spot: each limit a line with its number, the forbidden side in the pale slant. */
export const ReadingsPlot = ({ readings }: { readonly readings: readonly ReadingView[] }) => {
  const { t, figure, term } = useWords();
  const plot = plotOf(readings);
  if (plot === undefined) return null;
  const values = plot.points.flatMap(({ low, high }) => [low, high]);
  const said = t('readings.plot', {
    what: term(readings[0]?.what ?? ''),
    count: plot.points.length,
    least: figure(Math.min(...values), 4),
    most: figure(Math.max(...values), 4),
    unit: unitSign(plot.unit),
    outside: plot.points.filter(({ verdict }) => verdict === 'outside').length,
  });
  return (
    <figure className="plot">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={said}>
        <Forbidden plot={plot} />
        <path className="axis" d={`M${LEFT} ${TOP}V${HEIGHT - FOOT}H${WIDTH - RIGHT}`} />
        {[plot.min, plot.max].map((limit, i) =>
          limit === undefined ? null : <Limit key={i} plot={plot} at={limit} />,
        )}
        {plot.points.map((point, i) => (
          <Point key={point.spot} plot={plot} point={point} at={xOf(plot, i)} named={plot.points.length <= 16} />
        ))}
      </svg>
      <figcaption className="note">{said}</figcaption>
    </figure>
  );
};

const yOf = ({ from, to }: Plot, value: number): number => TOP + ((to - value) / (to - from)) * (HEIGHT - TOP - FOOT);

const xOf = ({ points }: Plot, index: number): number =>
  LEFT + ((index + 0.5) / points.length) * (WIDTH - LEFT - RIGHT);

const Forbidden = ({ plot }: { readonly plot: Plot }) => {
  const across = { x: LEFT, width: WIDTH - LEFT - RIGHT };
  const { min, max } = plot;
  return (
    <>
      {min === undefined ? null : (
        <rect className="forbidden" {...across} y={yOf(plot, min)} height={HEIGHT - FOOT - yOf(plot, min)} />
      )}
      {max === undefined ? null : <rect className="forbidden" {...across} y={TOP} height={yOf(plot, max) - TOP} />}
    </>
  );
};

const Limit = ({ plot, at }: { readonly plot: Plot; readonly at: number }) => {
  const { figure } = useWords();
  const y = yOf(plot, at);
  return (
    <>
      <path className="limit" d={`M${LEFT} ${y}H${WIDTH - RIGHT}`} />
      <text className="n" x={WIDTH - RIGHT + 4} y={y + 4}>
        {`${figure(at, 4)} ${unitSign(plot.unit)}`}
      </text>
    </>
  );
};

interface PointProps {
  readonly plot: Plot;
  readonly point: PlotPoint;
  readonly at: number;
  /** Whether its spot stands below it. */
  readonly named: boolean;
}

/** A reading inside is round, one outside is square; an interval of a gauge is as long as it is. */
const Point = ({ plot, point: { spot, low, high, verdict }, at: x, named }: PointProps) => {
  const [top, foot] = [yOf(plot, high), yOf(plot, low)];
  const middle = (top + foot) / 2;
  return (
    <g className={verdict === 'outside' ? 'reading s-outside' : 'reading'}>
      {high === low ? null : <path d={`M${x} ${top}V${foot}M${x - 4} ${top}H${x + 4}M${x - 4} ${foot}H${x + 4}`} />}
      {verdict === 'outside' ? (
        <path className="solid" d={`M${x - 4.5} ${middle - 4.5}h9v9h-9Z`} />
      ) : (
        <circle className="solid" cx={x} cy={middle} r={4.5} />
      )}
      {named ? (
        <text className="n" x={x} y={HEIGHT - 6} textAnchor="middle">
          {spot}
        </text>
      ) : null}
    </g>
  );
};
