import { useDeferredValue, type ReactNode } from 'react';

interface LaterProps {
  readonly children: ReactNode;
}

/** Something that is drawn after what stands around it, in pieces between which the page answers. */
export const Later = ({ children }: LaterProps) => {
  const shown = useDeferredValue(true, false);
  return shown ? children : null;
};
