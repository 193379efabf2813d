import { useWords } from '../../words/use-words.js';
import type { Order, Plan } from './order.js';

interface GrindOutProps {
  readonly plan: Plan;
  readonly order: Order;
}

/** Room around the drawing for its dimensions, as a part of its width. */
const RIM = 0.14;
/** Depth is drawn so many times larger than length, and the drawing says so: at 12:1 it would be a line. */
const DEEPER = 4;

/** The grind-out in plan and in section, to scale: opening, taper, and the plies that fill it. */
export const GrindOut = ({ plan, order }: GrindOutProps) => {
  const { t, figure } = useWords();
  const mm = (value: number): string => figure(value, 3);
  const { outerLengthMm: length, outerWidthMm: width, taperMm } = order;
  const words = t('bay.drawing', {
    ...{ length: mm(length), width: mm(width), taper: mm(taperMm), ratio: mm(plan.ratio) },
    ...{ opening: `${mm(plan.lengthMm)} × ${mm(plan.widthMm)}`, depth: mm(plan.depthMm) },
    plies: order.patch?.plies.length ?? 0,
  });
  return (
    <figure className="grind-out">
      <svg viewBox={boxOf(length, width)} role="img" aria-label={words} className="plan-view">
        <PlanView plan={plan} order={order} />
        <Across
          x={0}
          y={width / 2 + length * 0.06}
          long={length}
          says={`${mm(length)} mm`}
          unit={length}
          letters={0.045}
        />
      </svg>
      <svg viewBox={boxOf(length, plan.depthMm * DEEPER)} aria-hidden="true" className="section-view">
        <SectionView plan={plan} order={order} />
        <Across
          x={length / 2 - taperMm / 2}
          y={-(plan.depthMm * DEEPER) / 2 - length * 0.04}
          long={taperMm}
          says={`${mm(taperMm)} mm`}
          unit={length}
          letters={0.04}
        />
      </svg>
      <figcaption className="soft">{t('bay.drawn', { times: DEEPER, depth: mm(plan.depthMm) })}</figcaption>
    </figure>
  );
};

/** A box around something so long and so high, which stands in its middle. */
const boxOf = (length: number, height: number): string =>
  `${-length * (0.5 + RIM / 2)} ${-height / 2 - length * 0.11} ${length * (1 + RIM)} ${height + length * 0.22}`;

const PlanView = ({ plan: { lengthMm, widthMm }, order: { taperMm, patch } }: GrindOutProps) => (
  <>
    <Oblong length={lengthMm + 2 * taperMm} width={widthMm + 2 * taperMm} round={taperMm} className="ground" />
    {(patch?.plies ?? []).toReversed().map((ply, i) => (
      <Oblong
        key={i}
        length={ply.lengthMm}
        width={ply.widthMm}
        round={(ply.lengthMm - lengthMm) / 2}
        className="ply-outline"
      />
    ))}
    <Oblong length={lengthMm} width={widthMm} round={0} className="opening" />
  </>
);

interface OblongProps {
  readonly length: number;
  readonly width: number;
  /** Radius of its corners: the taper goes round them. */
  readonly round: number;
  readonly className: string;
}

const Oblong = ({ length, width, round, className }: OblongProps) => (
  <rect className={className} x={-length / 2} y={-width / 2} width={length} height={width} rx={round} />
);

/** Ground from the top: the laminate to both sides, the taper, and the plies one on the other. */
const SectionView = ({
  plan: { lengthMm, depthMm, sides },
  order: { taperMm, patch, outerLengthMm },
}: GrindOutProps) => {
  const high = depthMm * DEEPER;
  const top = -high / 2;
  const bottom = sides === 'both' ? 0 : high / 2;
  const side = (sign: 1 | -1): string => {
    const edge = (sign * outerLengthMm * (1 + RIM)) / 2;
    const outer = (sign * outerLengthMm) / 2;
    const inner = (sign * lengthMm) / 2;
    const lower = sides === 'both' ? `L${outer} ${high / 2}` : `L${inner} ${high / 2}`;
    return `M${edge} ${top}L${outer} ${top}L${inner} ${bottom}${lower}L${edge} ${high / 2}Z`;
  };
  const scale = patch === null ? 1 : (bottom - top) / patch.thicknessMm;
  return (
    <>
      <path className="laminate-cut" d={side(-1)} />
      <path className="laminate-cut" d={side(1)} />
      {patch?.plies.map((ply, i) => {
        const y = bottom - (scale * patch.thicknessMm * (i + 1)) / patch.plies.length;
        return <path key={i} className="ply-line" d={`M${-ply.lengthMm / 2} ${y}H${ply.lengthMm / 2}`} />;
      })}
      <path
        className="taper"
        d={`M${-lengthMm / 2} ${bottom}H${lengthMm / 2}M${lengthMm / 2} ${bottom}l${taperMm} ${top - bottom}`}
      />
    </>
  );
};

interface AcrossProps {
  readonly x: number;
  readonly y: number;
  readonly long: number;
  readonly says: string;
  /** The width of the drawing. */
  readonly unit: number;
  /** The size of its letters as a part of that: on a telephone they are still read. */
  readonly letters: number;
}

/** A dimension: how long, between two ticks. */
const Across = ({ x, y, long, says, unit, letters }: AcrossProps) => (
  <g className="dimension">
    <path
      d={`M${x - long / 2} ${y}H${x + long / 2}M${x - long / 2} ${y - unit * 0.012}v${unit * 0.024}M${x + long / 2} ${y - unit * 0.012}v${unit * 0.024}`}
    />
    <text x={x} y={y - unit * 0.012} fontSize={unit * letters} textAnchor="middle">
      {says}
    </text>
  </g>
);
