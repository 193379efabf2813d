import { HATCH_TILES } from './hatch-tiles.js';

/** All hatches, to stand once in the page; drawings fill with `url(#h-mat)` and the like. */
export const HatchDefinitions = () => (
  <svg width="0" height="0" className="definitions" aria-hidden="true">
    <defs>
      {Object.entries(HATCH_TILES).map(([hatch, { width, height, paths, dots = [] }]) => (
        <pattern
          key={hatch}
          id={`h-${hatch}`}
          className={`hatch-${hatch}`}
          width={width}
          height={height}
          patternUnits="userSpaceOnUse"
        >
          {paths.map((d) => (
            <path key={d} d={d} />
          ))}
          {dots.map(({ x, y, r }) => (
            <circle key={`${x} ${y}`} cx={x} cy={y} r={r} />
          ))}
        </pattern>
      ))}
      <pattern id="h-forbidden" className="hatch-forbidden" width="7" height="7" patternUnits="userSpaceOnUse">
        <path d="M0 7L7 0" />
      </pattern>
    </defs>
  </svg>
);
