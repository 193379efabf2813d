import type { LayerRecordView } from '@hull-record/contracts';
import { useEffect, useState } from 'react';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { windowWords } from './window-words.js';

/** How often the words are written anew. */
const EVERY_MS = 10_000;

interface NextLayerProps {
  readonly window: NonNullable<LayerRecordView['nextLayer']>;
}

/** The time in which the next layer bonds, counted down while the page is open, with who says so. */
export const NextLayer = ({ window }: NextLayerProps) => {
  const words = useWords();
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), EVERY_MS);
    return () => clearInterval(timer);
  }, []);
  return (
    <>
      <p className="b">{windowWords(window, now, words)}</p>
      <p className="note soft">
        <Said text={window.source} />
      </p>
    </>
  );
};
