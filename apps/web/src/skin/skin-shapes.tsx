import { lineOnMap, skinOutline, transomOutline, type GirthLine, type MapPoint, type Skin } from '@hull-record/trade';
import type { Frame } from './map-frame.js';

interface SkinShapesProps {
  readonly skin: Skin;
  readonly frame: Frame;
}

/** The lines of a skin on its board: outline with transom, chine, waterline and keel. */
export const SkinShapes = ({ skin, frame }: SkinShapesProps) => {
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
  const keel = [
    { x: 0, y: 0 },
    { x: skin.lengthMm, y: 0 },
  ];
  return (
    <>
      <path className="skin" d={line(skinOutline(skin), true)} />
      {transom.length === 0 ? null : <path className="skin" d={line(transom, true)} />}
      <path className="chine" d={both('chineGirthMm')} />
      <path className="water" d={both('waterlineGirthMm')} />
      <path className="keel" d={line(keel)} />
    </>
  );
};
