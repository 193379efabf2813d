import { useMemo, type MouseEvent } from 'react';
import { useWords } from '../words/use-words.js';
import { HEIGHT, LEFT, lineOf, RIGHT, scaleOf, stepsOf, type Scale } from './scale.js';
import type { Limit, Spot } from './series-of.js';

interface ChartDrawingProps {
  readonly name: string;
  readonly spots: readonly Spot[];
  /** What the chart says, in a sentence. */
  readonly sentence: string;
  readonly onPick: (hull: number) => void;
}

/** A chart of hulls in the order they were made; a hull that breaks a rule is square, filled and numbered. */
export const ChartDrawing = ({ name, spots, sentence, onPick }: ChartDrawingProps) => {
  const scale = useMemo(() => scaleOf(spots), [spots]);
  const clicked = (event: MouseEvent<SVGSVGElement>): void => {
    const { left, width } = event.currentTarget.getBoundingClientRect();
    onPick(scale.hullAt(((event.clientX - left) / width) * scale.width));
  };
  const drawn = (of: (spot: Spot) => number | null | undefined): (number | null)[] =>
    spots.map((spot) => {
      const value = of(spot);
      return value === null || value === undefined ? null : scale.y(value);
    });
  return (
    <figure className="process">
      <h3>{name}</h3>
      <div className="process-room" role="group" aria-label={name} tabIndex={0}>
        <svg
          viewBox={`0 0 ${scale.width} ${HEIGHT}`}
          width={scale.width}
          height={HEIGHT}
          role="img"
          aria-label={sentence}
          onClick={clicked}
        >
          <path className="axis" d={`M${LEFT} ${HEIGHT - 24}H${scale.width - RIGHT}`} />
          <path
            className="centre"
            d={stepsOf(
              scale,
              drawn(({ limit }) => limit?.centre),
            )}
          />
          <path
            className="control"
            d={stepsOf(
              scale,
              drawn(({ limit }) => limit?.lower),
            )}
          />
          <path
            className="control"
            d={stepsOf(
              scale,
              drawn(({ limit }) => limit?.upper),
            )}
          />
          <path
            className="way"
            d={lineOf(
              scale,
              drawn(({ value }) => value),
            )}
          />
          <path
            className="way low"
            d={lineOf(
              scale,
              drawn(({ second }) => second),
            )}
          />
          <Marks spots={spots} scale={scale} />
          <Numbers limit={spots.findLast(({ limit }) => limit !== null)?.limit ?? null} scale={scale} />
        </svg>
      </div>
      <figcaption className="note">{sentence}</figcaption>
    </figure>
  );
};

/** So many hulls have their points drawn round; of more the line alone is drawn, and those that break a rule. */
const POINTS_DRAWN = 120;

const Marks = ({ spots, scale }: { readonly spots: readonly Spot[]; readonly scale: Scale }) => (
  <>
    {spots.map(({ value, second, marked }, i) => {
      if (value === null) return null;
      const at = marked && second !== undefined && -second > value ? second : value;
      const [x, y] = [scale.x(i), scale.y(at)];
      if (marked)
        return (
          <g key={i} className="broken">
            <path d={`M${x - 4.5} ${y - 4.5}h9v9h-9Z`} />
            <text className="n" x={x} y={HEIGHT - 8} textAnchor="middle">
              {i + 1}
            </text>
          </g>
        );
      return spots.length > POINTS_DRAWN ? null : <circle key={i} cx={x} cy={y} r={3} />;
    })}
  </>
);

/** The numbers of the centre and the limits, at the newest hull. */
const Numbers = ({ limit, scale }: { readonly limit: Limit | null; readonly scale: Scale }) => {
  const { figure } = useWords();
  if (limit === null) return null;
  const all = [limit.upper, limit.centre, limit.lower].filter((each) => each !== null);
  return (
    <>
      {[...new Set(all)].map((each) => (
        <text key={each} className="n" x={scale.width - RIGHT + 6} y={scale.y(each) + 4}>
          {figure(each, 4)}
        </text>
      ))}
    </>
  );
};
