import { HowSeen } from '../skin/how-seen.js';
import type { PartKindName } from './part-kinds.js';
import type { MapPoint, Skin } from '@hull-record/trade';
import { useMemo, useRef, useState, type KeyboardEvent } from 'react';
import { frameOf } from '../skin/map-frame.js';
import { SkinShapes } from '../skin/skin-shapes.js';
import { Button } from '../ui/button.js';
import { Toggle } from '../ui/toggle.js';
import { useWords } from '../words/use-words.js';
import { areaBetween, cornersOf, onMap, type Area } from './area.js';
import { cellSizeMm, shadeOf, SHADES, type Cell, type Counted } from './density.js';
import { useView, type Chosen, type Dragging } from './use-view.js';
import { viewBoxOf } from './view-box.js';

interface MapBoardProps {
  readonly kind: PartKindName;
  readonly skin: Skin;
  readonly spots: readonly Counted[];
  readonly cells: readonly Cell[];
  readonly area: Area | undefined;
  readonly onArea: (area: Area) => void;
  /** What the drawing shows, in words. */
  readonly words: string;
}

/** The skin of a model to scale, with the defects of many hulls: shaded by how many, each a dot. */
export const MapBoard = ({ kind, skin, spots, cells, area, onArea, words }: MapBoardProps) => {
  const { t, term, figure } = useWords();
  const frame = useMemo(() => frameOf(kind, skin), [kind, skin]);
  const origin = frame.at({ x: 0, y: 0 });
  const toMap = ({ x, y }: MapPoint): MapPoint => ({
    x: frame.bowLeft ? origin.x - x : x - origin.x,
    y: origin.y - y,
  });
  const [dragging, setDragging] = useState<Dragging>('moving');
  const chosen = ({ from, to }: Chosen): void => onArea(areaBetween(toMap(from), toMap(to)));
  const drawing = useRef<SVGSVGElement>(null);
  const view = useView({ drawing, board: frame, dragging, onChosen: chosen });
  const dots = useMemo(() => dotsOf(spots, frame.at), [spots, frame]);
  const size = cellSizeMm(skin.lengthMm);
  const shades = useMemo(() => shadesOf(cells, size, frame.at), [cells, size, frame]);
  const keyPressed = (event: KeyboardEvent): void => {
    if (view.onKey(event.key)) event.preventDefault();
  };
  return (
    <figure className="many">
      <p className="side note soft">{term('port')}</p>
      <div className="map board" role="group" aria-label={t('manyMap.keys')} tabIndex={0} onKeyDown={keyPressed}>
        <svg
          ref={drawing}
          viewBox={viewBoxOf(view.seen, frame)}
          style={{ aspectRatio: `${frame.width} / ${frame.height}` }}
          className={dragging}
          role="img"
          aria-label={words}
          {...view.pointers}
        >
          <SkinShapes skin={skin} frame={frame} />
          {shades.map((d, shade) => (d === '' ? null : <path key={shade} className={`shade shade-${shade}`} d={d} />))}
          {area === undefined ? null : <path className="area" d={boxOf(cornersOf(area).map(frame.at))} />}
          {view.choosing === null ? null : <path className="area" d={boxOf([view.choosing.from, view.choosing.to])} />}
          <path className="dots" d={dots} />
        </svg>
        <ScaleBar width={view.seen.width} />
      </div>
      <p className="side note soft">{term('starboard')}</p>
      <div className="more">
        <Button onPress={view.zoomIn}>{t('manyMap.zoomIn')}</Button>
        <Button onPress={view.zoomOut}>{t('manyMap.zoomOut')}</Button>
        <Button onPress={view.showAll}>{t('manyMap.showAll')}</Button>
        <Toggle on={dragging === 'choosing'} onChange={(on) => setDragging(on ? 'choosing' : 'moving')}>
          {t('manyMap.choose')}
        </Toggle>
      </div>
      <figcaption className="note soft">
        <HowSeen skin={skin} frame={frame} /> {t('manyMap.shades', { size: figure(size, 4) })}
      </figcaption>
    </figure>
  );
};

/** How long a length of the skin is on the screen: the bar is a round length, and as long a part of what is seen. */
const ScaleBar = ({ width }: { readonly width: number }) => {
  const { figure } = useWords();
  const length = [5_000, 2_000, 1_000, 500, 200, 100].find((each) => each <= width / 4) ?? 50;
  const words = length >= 1_000 ? `${figure(length / 1_000)} m` : `${figure(length)} mm`;
  return (
    <p className="scale note" style={{ width: `${(100 * length) / width}%` }}>
      {words}
    </p>
  );
};

type At = (point: MapPoint) => MapPoint;
const written = ({ x, y }: MapPoint): string => `${Math.round(x)} ${Math.round(y)}`;

/** All dots as one path: a line of no length with a round end each, so that they keep their size when enlarged. */
const dotsOf = (spots: readonly Counted[], at: At): string =>
  spots.map((spot) => `M${written(at(onMap(spot)))}h0`).join('');

/** The squares of each shade as one path. */
const shadesOf = (cells: readonly Cell[], size: number, at: At): readonly string[] => {
  const most = cells[0]?.count ?? 0;
  const shades = Array.from({ length: SHADES }, () => '');
  for (const { x, y, count } of cells) {
    shades[shadeOf(count, most)] += boxOf([at({ x, y }), at({ x: x + size, y: y + size })]);
  }
  return shades;
};

const boxOf = ([a, b]: readonly MapPoint[]): string =>
  a === undefined || b === undefined ? '' : `M${written(a)}H${Math.round(b.x)}V${Math.round(b.y)}H${Math.round(a.x)}Z`;
