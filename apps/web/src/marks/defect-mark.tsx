import type { DefectView } from '@hull-record/contracts';
import type { ReactElement, ReactNode } from 'react';

type State = DefectView['state'];

/** Nearly a ring, drawn by hand: chalk on the hull. */
const CHALK = 'M2 -9C-6 -10.5 -10.4 -5 -9.6 1C-9 7 -3.6 10.4 2.4 9.4C8 8.4 10.6 3 9.6 -2.4C8.8 -7 4.4 -9.8 -1.4 -9.2';
const RING = <circle r="9" />;

const RINGS: Readonly<Record<State, ReactElement>> = {
  open: <path d={CHALK} className="bold" />,
  'repair to be accepted': <circle r="9" strokeDasharray="4 3" />,
  repaired: (
    <>
      {RING}
      <path d="M-10.5 10.5L10.5 -10.5" />
    </>
  ),
  concession: (
    <>
      {RING}
      <path d="M6 -6V-16L15 -12.5L6 -9" className="flag" />
    </>
  ),
  scrapped: (
    <>
      {RING}
      <path d="M-6.4 -6.4L6.4 6.4M6.4 -6.4L-6.4 6.4" />
    </>
  ),
};

/** The ring of a defect by its state, as on the hull map. */
export const DefectRing = ({ state }: { readonly state: State }) => (
  <svg className="ring" viewBox="-17 -17 34 34" aria-hidden="true">
    {RINGS[state]}
  </svg>
);

interface DefectMarkProps {
  readonly state: State;
  readonly children: ReactNode;
}

/** The ring of a defect and words beside it. */
export const DefectMark = ({ state, children }: DefectMarkProps) => (
  <span className={state === 'open' ? 'state s-outside' : 'state'}>
    <DefectRing state={state} />
    <span>{children}</span>
  </span>
);
