import { useWords } from '../../words/use-words.js';
import type { Scale } from './scale.js';

/** The ground of a plot by age, px. */
export const PLOT = { width: 720, height: 300, left: 66, right: 700, top: 64, foot: 258 } as const;

interface PlotFrameProps {
  /** Months. */
  readonly along: Scale;
  readonly up: Scale;
  readonly write: (value: number) => string;
  /** What each line is, in their order. */
  readonly names: readonly string[];
  readonly styleOf: (line: number) => string;
}

const NAME = 44;

/** Axes of a plot by age, with the names of its lines above it. */
export const PlotFrame = ({ along, up, write, names, styleOf }: PlotFrameProps) => {
  const { t, figure } = useWords();
  const wide = (PLOT.right - PLOT.left) / Math.max(1, names.length);
  return (
    <>
      {names.map((name, i) => (
        <g key={name} transform={`translate(${PLOT.left + i * wide} 22)`}>
          <path className={`curve ${styleOf(i)}`} d="M0 0H34" />
          <text x={42} y={4}>
            {name.length > NAME / Math.max(1, names.length - 1) ? `${name.slice(0, 22)}…` : name}
          </text>
        </g>
      ))}
      {up.ticks.map((tick) => (
        <g key={tick}>
          <path className="guide" d={`M${PLOT.left} ${up.at(tick)}H${PLOT.right}`} />
          <text className="n" x={PLOT.left - 8} y={up.at(tick) + 4} textAnchor="end">
            {write(tick)}
          </text>
        </g>
      ))}
      <path className="axis" d={`M${PLOT.left} ${PLOT.top}V${PLOT.foot}H${PLOT.right}`} />
      {along.ticks.map((tick) => (
        <text key={tick} className="n" x={along.at(tick)} y={PLOT.foot + 18} textAnchor="middle">
          {figure(tick)}
        </text>
      ))}
      <text x={PLOT.right} y={PLOT.height - 6} textAnchor="end">
        {t('cases.ageMonths')}
      </text>
    </>
  );
};
