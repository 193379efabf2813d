import type { Place } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { keepText } from '../texts/keep-text.js';
import { nextNumber } from '../marks/marks.js';
import { DefectEntity } from './defect.entity.js';
import { findLayerOfPart } from './find-layer-of-part.js';
import { placeOnPart, type Located } from './place-on-part.js';

/** What is told of a defect. */
export interface ToldDefect {
  readonly kind: string;
  readonly layer?: string | undefined;
  readonly place: Place;
  readonly lengthMm?: number | undefined;
  readonly widthMm?: number | undefined;
  readonly depthMm?: number | undefined;
  readonly grade?: string | undefined;
  readonly counted?: number | undefined;
  readonly countedAreaM2?: number | undefined;
  readonly note?: string | undefined;
}

/** A defect that was written: its mark is D and this number. */
export interface WrittenDefect extends Located {
  readonly id: string;
  readonly number: number;
}

/**
 * Writes a defect at its place. The place is checked against the model, and its zone follows from it.
 *
 * @param pointer of the object in the request that tells of it
 * @throws InvalidRequest, NotThere, Unprocessable
 */
export const writeDefect = async (
  fact: Fact,
  partId: string,
  told: ToldDefect,
  pointer: string,
  claimId: string | null = null,
): Promise<WrittenDefect> => {
  const located = await placeOnPart(fact.tx, partId, told.place, `${pointer}/place`);
  const number = await nextNumber(fact, 'defect', partId);
  const id = await fact.insert(DefectEntity, {
    partId,
    number,
    scheduleLayerId:
      told.layer === undefined ? null : await findLayerOfPart(fact.tx, partId, told.layer, `${pointer}/layer`),
    kind: told.kind,
    place: told.place,
    ...located,
    lengthMm: told.lengthMm ?? null,
    widthMm: told.widthMm ?? null,
    depthMm: told.depthMm ?? null,
    grade: told.grade ?? null,
    counted: told.counted ?? null,
    countedAreaM2: told.countedAreaM2 ?? null,
    note: await keepText(fact, told.note),
    claimId,
  });
  return { id, number, ...located };
};
