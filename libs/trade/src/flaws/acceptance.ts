import type { DefectKind } from '../defect-kinds.js';

/** General acceptance levels of ASTM D2563; level IV is agreed between buyer and supplier. */
export type FlawLevel = 'I' | 'II' | 'III';

/** Largest size that passes at a level: in mm and, apart, in inches, since the standard rounds each for itself. */
export interface FlawLimit {
  readonly mm: number;
  readonly inches: number;
  /** At most so many in an area. */
  readonly count?: { readonly atMost: number; readonly areaMm2: number };
  readonly depth?: string;
}

/** One kind with its limits; null: none is permitted. */
export interface FlawRow {
  readonly kind: DefectKind;
  readonly II: FlawLimit | null;
  readonly III: FlawLimit | null;
  /** How sure the numbers are. */
  readonly source: string;
}

const MEMORY = 'ASTM D2563-08 (withdrawn 2024), from memory, confirm against the standard';
const SHEET = 'ASTM D2563-08 (withdrawn 2024), as restated on an allowable-defects sheet and from memory';

/** 1 in2 and 1 ft2 in mm2, exact. */
const IN2 = 645.16;
const FT2 = 92_903.04;

const limit = (mm: number, inches: number, more: Omit<FlawLimit, 'mm' | 'inches'> = {}): FlawLimit => ({
  mm,
  inches,
  ...more,
});
const row = (kind: DefectKind, II: FlawLimit | null, III: FlawLimit | null, source = MEMORY): FlawRow => ({
  kind,
  II,
  III,
  source,
});

/**
 * Default acceptance table after ASTM D2563, whose level I permits none of any kind.
 *
 * A plant edits it; the numbers are vocabulary of a withdrawn standard, each row says how sure it is, and they never
 * stop anyone. Porosity, which the standard counts in pits, has no size.
 */
export const FLAW_ACCEPTANCE: readonly FlawRow[] = [
  row('chip', limit(3, 1 / 8), limit(6.5, 1 / 4)),
  row('crack', null, null),
  row('surface-crack', limit(3, 1 / 8), limit(6.5, 1 / 4)),
  row('crazing', limit(13, 1 / 2), limit(25, 1), SHEET),
  row('edge-delamination', limit(3, 1 / 8), limit(6.5, 1 / 4)),
  row('internal-delamination', null, null),
  row('dry-spot', limit(14, 9 / 16), limit(19, 3 / 4)),
  row(
    'foreign-inclusion',
    limit(0.8, 1 / 32, { count: { atMost: 1, areaMm2: FT2 } }),
    limit(1.5, 1 / 16, { count: { atMost: 1, areaMm2: FT2 } }),
  ),
  row('fracture', limit(21, 13 / 16), limit(29, 9 / 8)),
  row(
    'air-bubble',
    limit(1.5, 1 / 16, { count: { atMost: 2, areaMm2: IN2 } }),
    limit(3, 1 / 8, { count: { atMost: 4, areaMm2: IN2 } }),
    SHEET,
  ),
  row(
    'blister',
    limit(3, 1 / 8, { depth: 'height within drawing tolerance' }),
    limit(6.5, 1 / 4, { depth: 'height within drawing tolerance' }),
    SHEET,
  ),
  row('burned', null, null),
  row('fish-eye', limit(9.5, 3 / 8), limit(13, 1 / 2)),
  row('lack-of-fillout', limit(6.5, 1 / 4), limit(9.5, 3 / 8)),
  row('orange-peel', limit(14, 9 / 16), limit(29, 9 / 8)),
  row('pimple', null, limit(3, 1 / 8)),
  row(
    'pit',
    limit(0.4, 1 / 64, { depth: 'under 10 % of the wall' }),
    limit(0.8, 1 / 32, { depth: 'under 20 % of the wall' }),
    SHEET,
  ),
  row('pre-gel', limit(6.5, 1 / 4), limit(13, 1 / 2)),
  row('resin-pocket', limit(3, 1 / 8), limit(6.5, 1 / 4)),
  row('resin-rich-edge', limit(0.4, 1 / 64), limit(0.8, 1 / 32)),
  row(
    'shrink-mark',
    limit(9.5, 3 / 8, { depth: 'at most 25 % of the wall' }),
    limit(14, 9 / 16, { depth: 'at most 25 % of the wall' }),
  ),
  row('wash', limit(21, 13 / 16), limit(29, 9 / 8)),
  row('wormhole', limit(3, 1 / 8), limit(6.5, 1 / 4)),
  row(
    'wrinkles',
    limit(13, 1 / 2, { depth: 'under 10 % of the wall' }),
    limit(25, 1, { depth: 'under 15 % of the wall' }),
  ),
  row('scratch', limit(25, 1, { depth: '0.125 mm (0.005 in)' }), limit(25, 1, { depth: '0.255 mm (0.010 in)' })),
  row('short', null, null),
];
