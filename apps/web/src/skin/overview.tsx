import type { DefectView, PartView } from '@hull-record/contracts';
import { checkPlace, placeOnMap, type MapPoint, type Skin } from '@hull-record/trade';
import { useRef, type MouseEvent } from 'react';
import { HowSeen } from './how-seen.js';
import { DefectRing } from '../marks/defect-mark.js';
import { useWords } from '../words/use-words.js';
import type { Frame } from './map-frame.js';
import type { MapWindow } from './map-window.js';
import { SkinShapes } from './skin-shapes.js';

/** A part as the map shows it, with the defects that are there. */
export interface MappedPart extends Pick<PartView, 'kind' | 'number'> {
  readonly defects: readonly Pick<DefectView, 'id' | 'mark' | 'place' | 'state'>[];
}

/** What is drawn: the skin of a part on its board, and where the new mark is. */
export interface Drawn {
  readonly part: MappedPart;
  readonly skin: Skin;
  readonly frame: Frame;
  readonly mark: MapPoint | undefined;
}

interface OverviewProps {
  readonly of: Drawn;
  /** What the loupe looks at. */
  readonly window: (MapWindow & { readonly ratio: number }) | undefined;
  readonly onTouch: (onBoard: MapPoint) => void;
}

/** The whole skin with the defects that are on it already. A touch puts the mark there; keys work in the loupe. */
export const Overview = ({ of: { part, skin, frame, mark }, window, onTouch }: OverviewProps) => {
  const { t, term } = useWords();
  const board = useRef<HTMLDivElement>(null);
  const touched = (event: MouseEvent): void => {
    const box = board.current?.getBoundingClientRect();
    if (box === undefined) return;
    const at = { x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height };
    onTouch({ x: at.x * frame.width, y: at.y * frame.height });
  };
  return (
    <figure>
      <p className="side soft">{term('port')}</p>
      <div className="map" ref={board} onClick={touched} style={{ aspectRatio: `${frame.width} / ${frame.height}` }}>
        <svg
          viewBox={`0 0 ${frame.width} ${frame.height}`}
          role="img"
          aria-label={t('map.touch', { part: part.number, count: part.defects.length })}
        >
          <SkinShapes skin={skin} frame={frame} />
          {window === undefined ? null : (
            <rect
              className="looked-at"
              {...{ x: window.x, y: window.y }}
              width={window.width}
              height={window.width * window.ratio}
            />
          )}
        </svg>
        <Rings of={{ part, skin, frame, mark }} />
      </div>
      <p className="side soft">{term('starboard')}</p>
      <figcaption className="soft">
        <HowSeen skin={skin} frame={frame} />
      </figcaption>
    </figure>
  );
};

/** The defects that are there, and the new mark; they keep their size. */
const Rings = ({ of: { part, skin, frame, mark } }: { readonly of: Drawn }) => {
  const there = part.defects.filter(({ place }) => checkPlace(place, skin).length === 0);
  const style = ({ x, y }: MapPoint) => ({
    left: `${(100 * x) / frame.width}%`,
    top: `${(100 * y) / frame.height}%`,
  });
  return (
    <>
      {there.map(({ id, mark: name, place, state }) => (
        <span key={id} className="spot there n" style={style(frame.at(placeOnMap(place)))} aria-hidden="true">
          <DefectRing state={state} />
          {name}
        </span>
      ))}
      {mark === undefined ? null : (
        <span className="spot new" style={style(mark)} aria-hidden="true">
          <DefectRing state="open" />
        </span>
      )}
    </>
  );
};
