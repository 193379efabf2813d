import { useState, type ReactNode } from 'react';
import { Button } from '../ui/button.js';

interface Rows {
  readonly count: number;
  /** A button that adds one. */
  readonly more: (words: string) => ReactNode;
  readonly startAnew: () => void;
}

/** How many rows of a form are shown. */
export const useRows = (atFirst: number): Rows => {
  const [count, setCount] = useState(atFirst);
  return {
    count,
    more: (words) => <Button onPress={() => setCount((before) => before + 1)}>{words}</Button>,
    startAnew: () => setCount(atFirst),
  };
};
