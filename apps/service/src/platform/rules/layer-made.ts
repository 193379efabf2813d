import type { Laminate } from '@hull-record/contracts';

/** A layer as made, with what its schedule says of it and what was used in it and read on it. */
export interface LayerMade {
  readonly part_id: string;
  readonly ended_at: Date;
  readonly name: string;
  readonly zone: string;
  readonly code: string;
  readonly area_m2: number | null;
  readonly loss_allowance: number | null;
  readonly laminate: Laminate | null;
  readonly schedule: string;
  readonly schedule_id: string;
}
