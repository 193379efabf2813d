import { checkPlace, placeOnMap, type MapPoint } from '@hull-record/trade';
import { useRef, type KeyboardEvent } from 'react';
import { DefectRing } from '../marks/defect-mark.js';
import { useWords } from '../words/use-words.js';
import { dragged, zoomed, type Board, type MapWindow } from './map-window.js';
import type { Drawn } from './overview.js';
import { SkinShapes } from './skin-shapes.js';
import { useGestures } from './use-gestures.js';

interface LoupeProps {
  readonly of: Drawn;
  readonly window: MapWindow & { readonly ratio: number };
  readonly name: string;
  readonly onLook: (change: (from: MapWindow, board: Board) => MapWindow) => void;
  readonly onTouch: (onBoard: MapPoint) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/** A piece of the skin, nearer: a touch puts the mark there, a drag moves the view, two fingers bring it nearer. */
export const Loupe = ({ of: { part, skin, frame, mark }, window, name, onLook, onTouch, onKeyDown }: LoupeProps) => {
  const { t } = useWords();
  const ground = useRef<HTMLDivElement>(null);
  const { x, y, width, ratio } = window;
  const onBoard = (at: MapPoint): MapPoint => ({ x: x + at.x * width, y: y + at.y * width * ratio });
  const gestures = useGestures(ground, {
    onTap: (at) => onTouch(onBoard(at)),
    onDrag: (by) =>
      onLook((from, board) => dragged(from, { x: by.x * from.width, y: by.y * from.width * ratio }, board)),
    onPinch: (by, about) => onLook((from, board) => zoomed(from, by, onBoard(about), board)),
  });
  const style = (point: MapPoint) => ({
    left: `${(100 * (point.x - x)) / width}%`,
    top: `${(100 * (point.y - y)) / (width * ratio)}%`,
  });
  const there = part.defects.filter(({ place }) => checkPlace(place, skin).length === 0);
  return (
    <div
      ref={ground}
      className="loupe"
      role="application"
      aria-label={name}
      aria-description={t('map.loupeKeys')}
      tabIndex={0}
      style={{ aspectRatio: `1 / ${ratio}` }}
      onKeyDown={onKeyDown}
      {...gestures}
    >
      <svg viewBox={`${x} ${y} ${width} ${width * ratio}`} aria-hidden="true">
        <SkinShapes skin={skin} frame={frame} />
        <Grid window={window} />
        {mark === undefined ? null : (
          <path className="cross" d={`M${mark.x} ${y}v${width * ratio}M${x} ${mark.y}h${width}`} />
        )}
      </svg>
      {there.map(({ id, mark: named, place, state }) => (
        <span key={id} className="spot there n" style={style(frame.at(placeOnMap(place)))} aria-hidden="true">
          <DefectRing state={state} />
          {named}
        </span>
      ))}
      {mark === undefined ? null : (
        <span className="spot new" style={style(mark)} aria-hidden="true">
          <DefectRing state="open" />
        </span>
      )}
      <Ruler width={width} />
    </div>
  );
};

/** Lengths that a ruler may have, mm: the longest that takes up at most a third of the loupe. */
const LENGTHS = [50, 100, 200, 500, 1_000, 2_000, 5_000];
const lengthFor = (width: number): number => LENGTHS.filter((mm) => mm <= width / 3).at(-1) ?? 50;

const Ruler = ({ width }: { readonly width: number }) => {
  const { t, figure } = useWords();
  const long = lengthFor(width);
  return (
    <span className="ruler n" style={{ width: `${(100 * long) / width}%` }} aria-hidden="true">
      {t('map.mm', { mm: figure(long, 4) })}
    </span>
  );
};

/** Lines a ruler's length apart, so that distances are seen. */
const Grid = ({ window: { x, y, width, ratio } }: { readonly window: MapWindow & { readonly ratio: number } }) => {
  const long = lengthFor(width);
  const first = (from: number): number => Math.ceil(from / long) * long;
  const count = (size: number): number[] => Array.from({ length: Math.ceil(size / long) + 1 }, (_, i) => i * long);
  const high = width * ratio;
  const d = [
    ...count(width).map((at) => `M${first(x) + at} ${y}v${high}`),
    ...count(high).map((at) => `M${x} ${first(y) + at}h${width}`),
  ];
  return <path className="grid" d={d.join('')} />;
};
