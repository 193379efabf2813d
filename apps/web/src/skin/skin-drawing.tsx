import type { PartView } from '@hull-record/contracts';
import type { Skin } from '@hull-record/trade';
import { useWords } from '../words/use-words.js';
import type { Frame } from './map-frame.js';
import { SkinShapes } from './skin-shapes.js';

interface SkinDrawingProps {
  readonly part: PartView;
  readonly skin: Skin;
  readonly frame: Frame;
}

/** The skin itself; its words say which defects are on it. */
export const SkinDrawing = ({ part: { number, defects }, skin, frame }: SkinDrawingProps) => {
  const { t, term } = useWords();
  const named = defects.map(({ mark, zone }) => `${mark}, ${zone.split(', ').map(term).join(', ')}`).join('; ');
  return (
    <svg
      viewBox={`0 0 ${frame.width} ${frame.height}`}
      role="img"
      aria-label={t('map.label', { part: number, count: defects.length, defects: named || t('record.none') })}
    >
      <SkinShapes skin={skin} frame={frame} />
    </svg>
  );
};
