import type { TraceNode } from '@hull-record/contracts';
import type { DescribedLot } from '../describe-lots.js';

/** A node of the picture with nothing told of it but its kind, number and kilograms. */
const bare = (id: string, kind: TraceNode['kind'], code: string, kg: number | null): TraceNode => ({
  ...{ id, kind, code, kg, share: null, basis: null, possibly: false, possiblyAnyOf: null },
  ...{ origin: null, material: null, role: null, supplier: null, supplierLot: null, state: null, at: null },
  ...{ hin: null, now: null },
});

/** A lot in the picture. */
export const lotNode = (
  id: string,
  kg: number,
  lot: DescribedLot | undefined,
  more: Partial<TraceNode> = {},
): TraceNode => ({
  ...bare(id, 'lot', lot?.lot ?? id, kg),
  origin: lot?.origin ?? null,
  material: lot?.material ?? null,
  role: lot?.role ?? null,
  supplier: lot?.supplier ?? null,
  supplierLot: lot?.supplierLot ?? null,
  state: lot?.state ?? null,
  at: lot?.at.toISOString() ?? null,
  ...more,
});

/** A hull, or a part that is in none. */
export const ownerNode = (
  id: string,
  kind: 'hull' | 'part',
  code: string,
  kg: number | null,
  more: Partial<TraceNode>,
): TraceNode => ({ ...bare(id, kind, code, kg), ...more });
