import type { TankView } from '@hull-record/contracts';
import { Link } from '@tanstack/react-router';
import { useWords } from '../words/use-words.js';
import { tankShape, type TankShare } from './tank-shape.js';

interface TankDrawingsProps {
  readonly tanks: readonly TankView[];
}

/** Tanks side by side to one scale: area is kilograms. Each leads to its page. */
export const TankDrawings = ({ tanks }: TankDrawingsProps) => {
  const { t, mass } = useWords();
  const largest = Math.max(...tanks.map(({ capacityKg }) => capacityKg));
  return (
    <>
      <ul className="tanks">
        {tanks.map(({ code, material, capacityKg, lot, bookKg }) => (
          <li key={code}>
            <Link to="/tanks/$tank" params={{ tank: code }}>
              <TankDrawing
                capacityKg={capacityKg}
                largestKg={largest}
                shares={[{ source: lot, kg: Math.max(0, bookKg ?? 0) }]}
              />
              <b className="n">{code}</b>
            </Link>
            <div>{material}</div>
            <div>
              {lot === null
                ? t('store.tankEmpty', { capacity: mass(capacityKg) })
                : t('store.tankHolds', { left: mass(bookKg ?? 0), capacity: mass(capacityKg), lot })}
            </div>
          </li>
        ))}
      </ul>
      <p className="note soft">{t('store.tankScale')}</p>
    </>
  );
};

interface TankDrawingProps {
  readonly capacityKg: number;
  readonly largestKg: number;
  readonly shares: readonly TankShare[];
  /** Letters on the bands, which the words beside the drawing go by. */
  readonly letters?: boolean;
}

/** One tank; what it shows is said in words beside it. */
export const TankDrawing = ({ capacityKg, largestKg, shares, letters = false }: TankDrawingProps) => {
  const { width, height, bands } = tankShape(capacityKg, largestKg, shares);
  return (
    <svg
      className="tank"
      width={width + 4}
      height={height + 4}
      viewBox={`-2 -2 ${width + 4} ${height + 4}`}
      aria-hidden="true"
    >
      {bands.map(({ source, x, y, width: across, height: high }, i) => (
        <g key={source ?? 'others'}>
          <rect className={`tank-band b-${i % 2}`} x={x} y={y} width={across} height={high} />
          {letters && across > 14 && high > 16 ? (
            <text x={x + across / 2} y={y + high / 2 + 5} textAnchor="middle">
              {letterOf(i)}
            </text>
          ) : null}
        </g>
      ))}
      <path className="tank-wall" d={`M0 0V${height}H${width}V0`} />
      <path className="tank-full" d={`M0 0H${width}`} />
    </svg>
  );
};

/** The letter of the band at a place: A, B, C ... and from the 27th on none that is new. */
export const letterOf = (i: number): string => String.fromCharCode(65 + (i % 26));
