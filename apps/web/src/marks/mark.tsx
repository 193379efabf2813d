import type { ReactElement, ReactNode } from 'react';

/** The shapes that say how something stands. Each always comes with its word. */
export type Shape = 'inside' | 'near' | 'outside' | 'made' | 'to come' | 'tape' | 'stopped' | 'none';

const TICKED = (
  <>
    <circle r="8" />
    <path d="M-4 0L-1 3.4L4.4 -3.6" />
  </>
);

const SHAPES: Readonly<Record<Shape, ReactElement>> = {
  inside: TICKED,
  made: TICKED,
  near: <path d="M0 -8.5L9 7.5H-9ZM0 -3V2M0 4.4V5.4" />,
  outside: <path d="M-8 -8H8V8H-8ZM-4 -4L4 4M4 -4L-4 4" />,
  'to come': <circle r="8" strokeDasharray="3.1 3.1" />,
  tape: (
    <>
      <rect x="-10" y="-5" width="20" height="10" />
      <path d="M-8 5L-2 -5M-1 5L5 -5M6 5L10 -1.6" />
    </>
  ),
  stopped: <path d="M-3.5 -8.5H3.5L8.5 -3.5V3.5L3.5 8.5H-3.5L-8.5 3.5V-3.5ZM-4.5 0H4.5" />,
  none: <path d="M-5 0H5" />,
};

/** A shape and its words: the words carry the meaning, the shape is found faster, the colour comes last. */
export const mark = (kind: Shape, words: ReactNode): ReactElement => (
  <span className={`state s-${kind.replace(' ', '-')}`}>
    <svg className={`shape m-${kind.replace(' ', '-')}`} viewBox="-11 -11 22 22" aria-hidden="true">
      {SHAPES[kind]}
    </svg>
    <span>{words}</span>
  </span>
);

/** Something signed: who, and when. */
export const stamp = (words: ReactNode): ReactElement => <span className="stamp">{words}</span>;

/** A strip of tape: something held, or not yet signed. */
export const tape = (words: ReactNode): ReactElement => <span className="tape">{words}</span>;
