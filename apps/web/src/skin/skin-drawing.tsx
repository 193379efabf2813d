import type { PartView } from '@hull-record/contracts';
import { lineOnMap, skinOutline, transomOutline, type GirthLine, type MapPoint, type Skin } from '@hull-record/trade';
import { useWords } from '../words/use-words.js';
import type { Frame } from './map-frame.js';

interface SkinDrawingProps {
  readonly part: PartView;
  readonly skin: Skin;
  readonly frame: Frame;
}

/** The skin itself: its outline with transom, chine, waterline and keel; its words say which defects are on it. */
export const SkinDrawing = ({ part: { number, defects }, skin, frame }: SkinDrawingProps) => {
  const { t, term } = useWords();
  const line = (points: readonly MapPoint[], closed = false): string =>
    `M${points
      .map(frame.at)
      .map(({ x, y }) => `${x} ${y}`)
      .join('L')}${closed ? 'Z' : ''}`;
  const both = (of: GirthLine): string =>
    (['port', 'starboard'] as const)
      .map((side) => lineOnMap(skin, of, side))
      .filter((points) => points.length > 1)
      .map((points) => line(points))
      .join('');
  const transom = transomOutline(skin);
  const named = defects.map(({ mark, zone }) => `${mark}, ${zone.split(', ').map(term).join(', ')}`).join('; ');
  return (
    <svg
      viewBox={`0 0 ${frame.width} ${frame.height}`}
      role="img"
      aria-label={t('map.label', { part: number, count: defects.length, defects: named || t('record.none') })}
    >
      <path className="skin" d={line(skinOutline(skin), true)} />
      {transom.length === 0 ? null : <path className="skin" d={line(transom, true)} />}
      <path className="chine" d={both('chineGirthMm')} />
      <path className="water" d={both('waterlineGirthMm')} />
      <path
        className="keel"
        d={line([
          { x: 0, y: 0 },
          { x: skin.lengthMm, y: 0 },
        ])}
      />
    </svg>
  );
};
