import type { MapPoint } from '@hull-record/trade';
import { useRef, type PointerEvent, type RefObject } from 'react';

/** A finger that moved less than this, px, has tapped. A glove trembles more than a bare finger. */
const TREMBLE_PX = 12;

interface Gestures {
  /** A tap, where it was, as fractions of the element's width and height. */
  readonly onTap: (at: MapPoint) => void;
  /** One finger went so far, as fractions. */
  readonly onDrag: (by: MapPoint) => void;
  /** Two fingers went apart by a factor, about their middle. */
  readonly onPinch: (by: number, about: MapPoint) => void;
}

interface Finger {
  readonly began: MapPoint;
  readonly at: MapPoint;
}

const middle = (a: MapPoint, b: MapPoint): MapPoint => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
const apart = (a: MapPoint, b: MapPoint): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Taps, drags and pinches on an element, told as fractions of its size; to be spread over it. */
export const useGestures = (of: RefObject<HTMLElement | null>, { onTap, onDrag, onPinch }: Gestures) => {
  const fingers = useRef(new Map<number, Finger>());
  const wanders = useRef(false);
  const seen = ({ clientX, clientY }: PointerEvent): MapPoint => {
    const box = of.current?.getBoundingClientRect();
    return { x: clientX - (box?.left ?? 0), y: clientY - (box?.top ?? 0) };
  };
  const parts = ({ x, y }: MapPoint): MapPoint => ({
    x: x / (of.current?.clientWidth || 1),
    y: y / (of.current?.clientHeight || 1),
  });
  const moved = (id: number, before: Finger, at: MapPoint): void => {
    const other = [...fingers.current].find(([each]) => each !== id)?.[1].at;
    fingers.current.set(id, { ...before, at });
    if (other !== undefined) {
      wanders.current = true;
      const was = apart(before.at, other);
      if (was > 0) onPinch(apart(at, other) / was, parts(middle(at, other)));
      return;
    }
    if (apart(before.began, at) > TREMBLE_PX) wanders.current = true;
    if (wanders.current) onDrag(parts({ x: at.x - before.at.x, y: at.y - before.at.y }));
  };
  const lifted = (event: PointerEvent, taps: boolean): void => {
    const finger = fingers.current.get(event.pointerId);
    fingers.current.delete(event.pointerId);
    if (finger !== undefined && taps && !wanders.current && fingers.current.size === 0) onTap(parts(seen(event)));
  };
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>): void => {
      if (event.button !== 0) return;
      if (fingers.current.size === 0) wanders.current = false;
      event.currentTarget.setPointerCapture(event.pointerId);
      const at = seen(event);
      fingers.current.set(event.pointerId, { began: at, at });
    },
    onPointerMove: (event: PointerEvent<HTMLElement>): void => {
      const before = fingers.current.get(event.pointerId);
      if (before !== undefined) moved(event.pointerId, before, seen(event));
    },
    onPointerUp: (event: PointerEvent<HTMLElement>): void => lifted(event, true),
    onPointerCancel: (event: PointerEvent<HTMLElement>): void => lifted(event, false),
  };
};
