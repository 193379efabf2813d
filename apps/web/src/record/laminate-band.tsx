import type { Hatch } from '../marks/hatch-tiles.js';

interface LaminateBandProps {
  readonly hatch: Hatch;
  /** What it shows, for those who do not see it. */
  readonly words: string;
  /** It is not made yet: drawn pale, its edge dashed. */
  readonly isLater?: boolean;
  readonly isOpened?: boolean;
}

/** One layer of a laminate in section: a hatched band, as high as what stands beside it. */
export const LaminateBand = ({ hatch, words, isLater = false, isOpened = false }: LaminateBandProps) => (
  <svg className={`${isLater ? 'later' : 'full'}${isOpened ? ' opened-band' : ''}`} role="img" aria-label={words}>
    <rect width="100%" height="100%" fill={`url(#h-${hatch})`} />
    <rect className="edge" width="100%" height="100%" />
  </svg>
);
