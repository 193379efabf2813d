import type { EntityManager } from 'typeorm';
import type { Recomputing } from '@hull-record/contracts';
import { recomputingAny, recomputingDownstream } from '../recompute/recomputing.js';
import type { HeldOn } from './reach-of-hold.js';

/** Whether where the held thing went is being worked out anew. */
export const recomputingHold = (tx: EntityManager, { lotId }: HeldOn): Promise<Recomputing | null> =>
  lotId === null ? recomputingAny(tx) : recomputingDownstream(tx, lotId);
