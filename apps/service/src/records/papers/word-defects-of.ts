import type { DefectView } from '@hull-record/paper';
import type { DefectRow } from '../../platform/views/faults.js';
import type { PartRow } from '../../platform/views/making.js';
import { verdictsOf, type VerdictRow } from '../../platform/views/verdicts.js';
import type { DispositionRow } from '../load-judgements.js';
import type { PlantTime } from '../../platform/papers/plant-time.js';
import { gradedKind, layerOf, noteOf, placeOf, sizeOf } from '../word-defects.js';
import { wordPhotos, type Pictures } from '../word-photos.js';
import { wordDisposition } from '../word-judgements.js';

/** What was found and decided about defects. */
export interface DefectsJudged {
  readonly part: PartRow;
  readonly verdicts: readonly VerdictRow[];
  readonly dispositions: ReadonlyMap<string, DispositionRow>;
}

/** Defects of a part as its papers print them, in the order given; with photos where the paper has pictures of them. */
export const wordDefectsOf = (
  rows: readonly DefectRow[],
  { part, verdicts, dispositions }: DefectsJudged,
  time: PlantTime,
  pictures?: Pictures,
): readonly DefectView[] =>
  rows.map((row) => {
    const decided = dispositions.get(row.id);
    const said = [
      ...(decided === undefined ? [] : [wordDisposition(decided, time)]),
      ...(row.repairs.length === 0 ? [] : [`repair ${row.repairs.join(', ')}`]),
    ];
    return {
      ...{ mark: row.mark, kind: gradedKind(row), place: placeOf(row), size: sizeOf(row), layer: layerOf(part, row) },
      ...{
        state: row.state,
        disposition: said.length === 0 ? null : said.join('; '),
        note: noteOf(row, time, pictures ? 'printed' : 'named'),
      },
      photos: pictures ? wordPhotos(row, time, pictures) : [],
      verdicts: verdictsOf(verdicts, row.id).map((verdict) => ({
        ...verdict,
        topic: `${verdict.topic} of ${row.mark}`,
      })),
    };
  });
