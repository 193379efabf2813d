import { girthAt, zonesAlong, type Skin } from '@hull-record/trade';
import { HowSeen } from '../skin/how-seen.js';
import { frameOf } from '../skin/map-frame.js';
import { SkinShapes } from '../skin/skin-shapes.js';
import { useWords } from '../words/use-words.js';

interface SkinFigureProps {
  readonly kind: string;
  readonly skin: Skin;
}

/** A skin unrolled flat, as defects are placed on it, with thin lines where a zone along the hull ends. */
export const SkinFigure = ({ kind, skin }: SkinFigureProps) => {
  const { t, term, figure } = useWords();
  const frame = frameOf(kind, skin);
  const length = figure(skin.lengthMm / 1000, 4);
  const lines = zonesAlong(skin.lengthMm)
    .slice(1)
    .map(({ fromMm }) => {
      const half = girthAt(skin, fromMm, 'edgeGirthMm') ?? 0;
      const [port, starboard] = [frame.at({ x: fromMm, y: half }), frame.at({ x: fromMm, y: -half })];
      return `M${port.x} ${port.y}L${starboard.x} ${starboard.y}`;
    });
  return (
    <figure>
      <p className="side note soft">{term('port')}</p>
      <div className="map" style={{ aspectRatio: `${frame.width} / ${frame.height}` }}>
        <svg
          viewBox={`0 0 ${frame.width} ${frame.height}`}
          role="img"
          aria-label={t('models.drawing', { kind: term(kind), length })}
        >
          <SkinShapes skin={skin} frame={frame} />
          <path className="zone-line" d={lines.join('')} />
        </svg>
      </div>
      <p className="side note soft">{term('starboard')}</p>
      <figcaption className="note soft">
        <HowSeen skin={skin} frame={frame} />
      </figcaption>
    </figure>
  );
};
