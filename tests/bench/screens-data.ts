import type { DefectMap, HullListItem, TraceGraph, TraceNode } from '@hull-record/contracts';

/** An invented skin of an 8.6 m hull. */
export const SKIN = {
  lengthMm: 8_600,
  stations: [
    { xMm: 0, edgeGirthMm: 1_900, chineGirthMm: 1_150, waterlineGirthMm: 1_250 },
    { xMm: 4_300, edgeGirthMm: 2_050, chineGirthMm: 1_250, waterlineGirthMm: 1_300 },
    { xMm: 8_600, edgeGirthMm: 900, chineGirthMm: 500, waterlineGirthMm: 600 },
  ],
  transom: { halfWidthMm: 1_250, heightMm: 900 },
};

const idOf = (group: number, i: number): string =>
  `${String(group).padStart(8, '0')}-0000-4000-8000-${String(i).padStart(12, '0')}`;

/** So many defects, spread over the skin as a fixed sequence has it. */
export const manyDefects = (count: number): DefectMap => ({
  ...{ model: 'TS86', partKind: 'hull molding', parts: 900, partsWith: 800, found: count, recomputing: null },
  kinds: [{ kind: 'air-bubble', found: count }],
  points: Array.from({ length: count }, (_, i) => ({
    ...{ id: idOf(1, i), part: `H-${i % 800}`, kind: 'air-bubble', surface: 'shell' as const },
    along: (i * 7_919) % 8_600,
    across: ((i * 104_729) % 1_700) - 850,
  })),
});

/** A lot that went through 40 tank fills and mixtures into hulls: so many lots and hulls in all. */
export const wideTrace = (count: number): TraceGraph => {
  const [fills, hulls] = [40, 360];
  const mixes = count - 1 - fills - hulls;
  const lot = (id: string, code: string, origin: string, kg: number): TraceNode => ({
    ...NODE,
    id,
    code,
    origin,
    kg,
    kind: 'lot',
  });
  const each = <T>(of: number, make: (i: number) => T): T[] => Array.from({ length: of }, (_, i) => make(i));
  return {
    ...{ of: 'lot', codes: ['R-1'], leftOut: null, assumes: 'Assumes well-mixed tanks.', recomputing: null },
    nodes: [
      lot(idOf(1, 0), 'R-1', 'received', 4_000),
      ...each(fills, (i) => lot(idOf(2, i), `T1-${i}`, 'tank', 100)),
      ...each(mixes, (i) => lot(idOf(3, i), `MIX-${i}`, 'mixed', 2)),
      ...each(hulls, (i): TraceNode => ({
        ...NODE,
        id: idOf(4, i),
        code: `H-${i}`,
        kind: 'hull',
        kg: 9,
        share: 0.5,
        basis: 'metered',
      })),
    ],
    links: [
      ...each(fills, (i) => ({ from: idOf(1, 0), to: idOf(2, i), kg: 100 })),
      ...each(mixes, (i) => ({ from: idOf(2, i % fills), to: idOf(3, i), kg: 2 })),
      ...each(mixes, (i) => ({ from: idOf(3, i), to: idOf(4, (i * 7) % hulls), kg: 2 })),
    ],
  };
};

const NODE: Omit<TraceNode, 'id' | 'code' | 'kind'> = {
  ...{ origin: null, material: null, role: null, supplier: null, supplierLot: null, state: null, at: null },
  ...{ kg: null, share: null, basis: null, possibly: false, possiblyAnyOf: null, hin: null, now: null },
};

/** One page of a list of so many hulls, from the one at `from`. */
export const listOfHulls = (
  count: number,
  from: number,
  limit: number,
): { readonly items: readonly HullListItem[]; readonly next: string | null } => ({
  items: Array.from({ length: Math.min(limit, count - from) }, (_, i) => {
    const at = new Date(Date.UTC(2026, 0, 1) - (from + i) * 3_600_000).toISOString();
    return {
      ...{ id: idOf(5, from + i), number: `H-${count - from - i}`, hin: i % 3 === 0 ? null : 'TRZ00861A626' },
      ...{ model: 'TS86', modelName: 'TS 86', startedAt: at, layersMade: i % 9, layersScheduled: 8 },
      ...{ openDefects: i % 4, now: { what: 'started', dealer: null, since: at } },
    };
  }),
  next: from + limit < count ? String(from + limit) : null,
});
