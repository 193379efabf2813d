import { useEffect, useRef, useState, type PointerEvent, type RefObject } from 'react';
import type { MapPoint } from '@hull-record/trade';
import { middleOf, moved, whole, zoomed, type BoardPoint, type BoardSize, type Seen } from './view-box.js';

/** One step of zoom, and of a move by a key, as a part of what is seen. */
const STEP = 1.5;
const KEY_MOVE = 0.15;

/** What a drag is for. */
export type Dragging = 'moving' | 'choosing';

/** A drag that chooses, from where to where on the board. */
export interface Chosen {
  readonly from: BoardPoint;
  readonly to: BoardPoint;
}

interface ViewProps {
  /** The drawing that is moved. */
  readonly drawing: RefObject<SVGSVGElement | null>;
  readonly board: BoardSize;
  readonly dragging: Dragging;
  readonly onChosen: (chosen: Chosen) => void;
}

/** What is seen of a board that is moved and enlarged by pointer, fingers, wheel and keys; and what is being chosen. */
export const useView = ({ drawing, board, dragging, onChosen }: ViewProps) => {
  const [seen, setSeen] = useState<Seen>(whole(board));
  const [choosing, setChoosing] = useState<Chosen | null>(null);
  const fingers = useRef(new Map<number, BoardPoint>());
  const at = (event: { readonly clientX: number; readonly clientY: number }): BoardPoint => pointOn(drawing, event);
  const zoom = (times: number, about?: BoardPoint): void =>
    setSeen((before) => zoomed(before, times, about ?? middleOf(before, board), board));
  const move = (by: MapPoint): void => setSeen((before) => moved(before, by, board));

  useWheel(drawing, (event) => zoom(event.deltaY < 0 ? STEP : 1 / STEP, at(event)));

  const onPointerDown = (event: PointerEvent<SVGSVGElement>): void => {
    event.currentTarget.setPointerCapture(event.pointerId);
    fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (dragging === 'choosing' && fingers.current.size === 1) setChoosing({ from: at(event), to: at(event) });
    else setChoosing(null);
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>): void => {
    const before = fingers.current.get(event.pointerId);
    if (before === undefined) return;
    if (fingers.current.size === 2) pinch(event, before);
    else if (choosing !== null) setChoosing({ from: choosing.from, to: at(event) });
    else {
      const [from, to] = [at({ clientX: before.x, clientY: before.y }), at(event)];
      move({ x: from.x - to.x, y: from.y - to.y });
    }
    fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
  };
  const pinch = (event: PointerEvent<SVGSVGElement>, before: BoardPoint): void => {
    const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
    if (other === undefined) return;
    const apart = (point: BoardPoint): number => Math.hypot(point.x - other.x, point.y - other.y);
    const was = apart(before);
    if (was > 0) zoom(apart({ x: event.clientX, y: event.clientY }) / was, at({ clientX: other.x, clientY: other.y }));
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>): void => {
    fingers.current.delete(event.pointerId);
    if (choosing === null) return;
    setChoosing(null);
    onChosen({ from: choosing.from, to: at(event) });
  };
  const onKey = (key: string): boolean => {
    const by = seen.width * KEY_MOVE;
    const moves: Readonly<Record<string, MapPoint>> = {
      ...{ ArrowLeft: { x: -by, y: 0 }, ArrowRight: { x: by, y: 0 } },
      ...{ ArrowUp: { x: 0, y: -by }, ArrowDown: { x: 0, y: by } },
    };
    const step = moves[key];
    if (step) move(step);
    else if (key === '+' || key === '=') zoom(STEP);
    else if (key === '-') zoom(1 / STEP);
    else if (key === '0') setSeen(whole(board));
    else return false;
    return true;
  };
  return {
    ...{ seen, choosing, onKey },
    zoomIn: () => zoom(STEP),
    zoomOut: () => zoom(1 / STEP),
    showAll: () => setSeen(whole(board)),
    pointers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: onPointerUp },
  };
};

/** Where the pointer is on the board, in its units. */
const pointOn = (
  drawing: RefObject<SVGSVGElement | null>,
  { clientX, clientY }: { readonly clientX: number; readonly clientY: number },
): BoardPoint => {
  const matrix = drawing.current?.getScreenCTM()?.inverse();
  if (!matrix) return { x: 0, y: 0 };
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix);
  return { x, y };
};

/** Listens to the wheel in a way that keeps the page where it is; React's own listener cannot. */
const useWheel = (drawing: RefObject<SVGSVGElement | null>, turned: (event: WheelEvent) => void): void => {
  const latest = useRef(turned);
  useEffect(() => {
    latest.current = turned;
  });
  useEffect(() => {
    const element = drawing.current;
    const listen = (event: WheelEvent): void => {
      event.preventDefault();
      latest.current(event);
    };
    element?.addEventListener('wheel', listen, { passive: false });
    return () => element?.removeEventListener('wheel', listen);
  }, [drawing]);
};
