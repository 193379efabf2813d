import type { Recomputing } from '@hull-record/contracts';
import type { PaperView } from '@hull-record/paper';
import { plantTime, type PlantTime } from './plant-time.js';
import type { PlantRow } from './plant-of.js';

/** What every paper says of itself, and the clock that it words times by. */
export const wordPaper = (
  { plant, time_zone }: PlantRow,
  newest: Date,
  recomputing: Recomputing | null,
): { readonly paper: PaperView; readonly time: PlantTime } => {
  const time = plantTime(time_zone);
  return {
    time,
    paper: {
      plantName: plant,
      stateAsOf: { instant: newest.toISOString(), text: time.at(newest) },
      recomputing:
        recomputing === null
          ? null
          : 'Being worked out anew after a correction: figures on this paper may change. Draw it again later.',
    },
  };
};

/** "Opened": a word that begins a sentence. */
export const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
