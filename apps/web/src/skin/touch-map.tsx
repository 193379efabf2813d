import { movedPlace, nearestPlace, placeOnMap, type MapPoint, type Place, type Skin } from '@hull-record/trade';
import { useState, type KeyboardEvent } from 'react';
import { useWords } from '../words/use-words.js';
import { Loupe } from './loupe.js';
import { frameOf } from './map-frame.js';
import { seeing, windowAround, zoomed, type Board } from './map-window.js';
import { MapPad } from './map-pad.js';
import { Overview, type MappedPart } from './overview.js';

interface TouchMapProps {
  readonly part: MappedPart;
  readonly skin: Skin;
  /** Where the mark is; undefined before the map was touched. */
  readonly place: Place | undefined;
  readonly onPlace: (place: Place) => void;
}

/** The loupe is this high to its width. */
const LOUPE_RATIO = 0.62;
/** What the loupe shows of the skin after the first touch, mm. */
const FIRST_LOOK_MM = 1_600;

const ARROWS: Readonly<Record<string, MapPoint>> = {
  ...{ ArrowLeft: { x: -1, y: 0 }, ArrowRight: { x: 1, y: 0 } },
  ...{ ArrowUp: { x: 0, y: -1 }, ArrowDown: { x: 0, y: 1 } },
};

/**
 * The skin of a part to be touched: all of it, and a loupe on the piece around the mark.
 *
 * A touch of the whole places the mark; in the loupe it is placed finely, dragged, pinched nearer or moved step by step,
 * by touch or with the keyboard. The caller's fields take the same place in figures.
 */
export const TouchMap = ({ part, skin, place, onPlace }: TouchMapProps) => {
  const { t } = useWords();
  const frame = frameOf(part.kind, skin);
  const board: Board = { ...frame, ratio: LOUPE_RATIO };
  const [window, look] = useState(() => windowAround({ x: frame.width / 2, y: frame.height / 2 }, Infinity, board));
  const [step, setStep] = useState(10);
  const mark = place === undefined ? undefined : frame.at(placeOnMap(place));
  // A mark that was typed into the fields may be out of the loupe's sight.
  const shown = mark === undefined ? window : seeing(window, mark, board);
  const putAt = (onBoard: MapPoint, width: number): void => {
    const next = nearestPlace(frame.back(onBoard), skin);
    look(windowAround(frame.at(placeOnMap(next)), width, board));
    onPlace(next);
  };
  const move = (way: MapPoint, far: number): void => {
    const from = place === undefined ? frame.back({ x: frame.width / 2, y: frame.height / 2 }) : placeOnMap(place);
    const next = movedPlace(from, { x: (frame.bowLeft ? -1 : 1) * way.x * far, y: -way.y * far }, skin);
    look(seeing(shown, frame.at(placeOnMap(next)), board));
    onPlace(next);
  };
  const middle = { x: shown.x + shown.width / 2, y: shown.y + (shown.width * LOUPE_RATIO) / 2 };
  const zoom = (by: number, about = mark ?? middle): void => look(zoomed(shown, by, about, board));
  const onKeyDown = (event: KeyboardEvent): void => {
    const way = ARROWS[event.key];
    if (way !== undefined) move(way, event.shiftKey ? 10 * step : step);
    else if (event.key === '+' || event.key === '=') zoom(1.5);
    else if (event.key === '-') zoom(1 / 1.5);
    else return;
    event.preventDefault();
  };
  return (
    <div className="touch-map">
      <Overview
        of={{ part, skin, frame, mark }}
        window={mark === undefined ? undefined : { ...shown, ratio: LOUPE_RATIO }}
        onTouch={(at) => putAt(at, mark === undefined ? FIRST_LOOK_MM : shown.width)}
      />
      <div className="fine">
        <Loupe
          of={{ part, skin, frame, mark }}
          window={{ ...shown, ratio: LOUPE_RATIO }}
          name={t('map.loupe')}
          onLook={(change) => look(change(shown, board))}
          onTouch={(at) => putAt(at, Math.min(shown.width, FIRST_LOOK_MM))}
          onKeyDown={onKeyDown}
        />
        <MapPad step={step} onStep={setStep} onMove={(way) => move(way, step)} onZoom={(by) => zoom(by)} />
      </div>
    </div>
  );
};
