import { LotCycle } from '@hull-record/genealogy';
import { Conflict, type Refusal } from '../refusals.js';

/** A fact that would make a lot of itself by way of a tank, found when what follows from it is worked out. */
export const fromGenealogy = (error: unknown): Refusal | undefined =>
  error instanceof LotCycle
    ? new Conflict(
        'lot-made-of-itself',
        'A lot would be made of itself by way of a tank: correct what was drawn from the tank first.',
      )
    : undefined;
