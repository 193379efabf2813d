import { useState, type ReactNode } from 'react';
import { useWords } from '../words/use-words.js';
import { Kept } from './kept.js';
import { LostReadings, type Lost } from './lost-readings.js';
import { PartFrame, type AtPart } from './part-frame.js';

/** An entry that this device has: its id, how many of its photos could not be kept with it, and which readings. */
export interface KeptEntry {
  readonly id: string;
  readonly lost?: number;
  readonly lostReadings?: Lost | null;
}

interface EntryPageProps {
  readonly part: string;
  /** What is done here. */
  readonly task: string;
  readonly form: (at: AtPart, onKept: (kept: KeptEntry) => void) => ReactNode;
  /** What there is to do while the entry waits. */
  readonly waits: string;
  /** What there is to do once the service has it; it is given the number under which it was recorded. */
  readonly next: (mark: string) => ReactNode;
  readonly again: string;
}

/** A page of the bay that makes entries about one part: the form, and what became of the entry. */
export const EntryPage = ({ part, task, form, waits, next, again }: EntryPageProps) => {
  const { t } = useWords();
  const [kept, setKept] = useState<KeptEntry>();
  return (
    <PartFrame number={part} task={task}>
      {(at) =>
        kept === undefined ? (
          form(at, setKept)
        ) : (
          <>
            {kept.lost ? (
              <p className="wrong" role="alert">
                {t('bay.photosLost', { count: kept.lost })}
              </p>
            ) : null}
            {kept.lostReadings ? <LostReadings of={kept.lostReadings} /> : null}
            <Kept id={kept.id} part={part} waits={waits} again={again} onAgain={() => setKept(undefined)} next={next} />
          </>
        )
      }
    </PartFrame>
  );
};
