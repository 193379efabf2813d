import type { DefectKind } from '../defect-kinds.js';

/** What may have caused a kind of flaw, for whoever looks for the cause (a resin maker's list). */
export interface FlawCauses {
  readonly kinds: readonly DefectKind[];
  readonly causes: readonly string[];
}

/** Where the list comes from; it suggests where to look and finds nothing. */
export const FLAW_CAUSES_SOURCE = "resin maker's list of laminate troubles";

const CAUSES: readonly FlawCauses[] = [
  { kinds: ['air-bubble'], causes: ['air whipped in when mixing', 'dirty surface', 'not rolled out'] },
  { kinds: ['blister'], causes: ['cure too rapid', 'moisture in resin, filler or glass'] },
  {
    kinds: ['crazing'],
    causes: ['resin-rich area', 'impact', 'thermal or wet and dry cycling', 'shrinkage'],
  },
  {
    kinds: ['edge-delamination', 'internal-delamination'],
    causes: ['poor saturation', 'dirty surface', 'glass content too high', 'air-inhibited coat not removed'],
  },
];

/** Causes that the list names for a kind; none when it does not name the kind. */
export const likelyCauses = (kind: DefectKind): readonly string[] =>
  CAUSES.find(({ kinds }) => kinds.includes(kind))?.causes ?? [];
