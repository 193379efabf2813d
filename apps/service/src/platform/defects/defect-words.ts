import { isDefectKind, parseD714 } from '@hull-record/trade';
import { InvalidRequest } from '../refusals.js';

interface DefectWords {
  readonly kind: string;
  readonly grade?: string | undefined;
}

/**
 * Holds the words of a defect to what they may be.
 *
 * @param at pointer of the object that has them
 * @throws InvalidRequest for a kind that is none, or a grade that is none or of something that is not graded
 */
export const assertDefectWords = ({ kind, grade }: DefectWords, at = ''): void => {
  if (!isDefectKind(kind))
    throw new InvalidRequest([
      { pointer: `${at}/kind`, detail: `${kind} is not a kind of defect: see GET /api/defect-kinds` },
    ]);
  if (grade === undefined) return;
  if (kind !== 'blister')
    throw new InvalidRequest([
      { pointer: `${at}/grade`, detail: 'only blisters are graded by ASTM D714: leave it out' },
    ]);
  if (!parseD714(grade)) {
    throw new InvalidRequest([
      {
        pointer: `${at}/grade`,
        detail: 'is not an ASTM D714 grade: write 8, 6, 4 or 2 with F, M, MD or D, such as 6M; or 10',
      },
    ]);
  }
};
