/** Where the name of a defect kind comes from. */
export type DefectKindSource = 'ASTM D2563 (withdrawn 2024; vocabulary only)' | 'common practice';

/** A named kind of defect. `alsoCalled` holds shop words that mean it, some of which also mean another kind. */
export interface DefectKindEntry {
  readonly code: string;
  readonly label: string;
  readonly source: DefectKindSource;
  readonly alsoCalled?: readonly string[];
}

const D2563 = 'ASTM D2563 (withdrawn 2024; vocabulary only)';
const PRACTICE = 'common practice';

/**
 * The kinds of defect a record may name, in the order of the lists they come from.
 *
 * ASTM D2563 is withdrawn, so it lends its words and none of its acceptance limits. Blisters are graded apart.
 */
export const DEFECT_KINDS = [
  { code: 'chip', label: 'Chip', source: D2563 },
  { code: 'crack', label: 'Crack (through)', source: D2563 },
  { code: 'surface-crack', label: 'Crack, surface', source: D2563 },
  { code: 'crazing', label: 'Crazing', source: D2563 },
  { code: 'edge-delamination', label: 'Delamination, edge', source: D2563, alsoCalled: ['delamination'] },
  { code: 'internal-delamination', label: 'Delamination, internal', source: D2563, alsoCalled: ['delamination'] },
  { code: 'dry-spot', label: 'Dry spot', source: D2563 },
  { code: 'foreign-inclusion', label: 'Foreign inclusion', source: D2563, alsoCalled: ['inclusion'] },
  { code: 'fracture', label: 'Fracture', source: D2563 },
  { code: 'air-bubble', label: 'Air bubble (void)', source: D2563, alsoCalled: ['air bubble', 'void'] },
  { code: 'blister', label: 'Blister', source: D2563 },
  { code: 'burned', label: 'Burned', source: D2563 },
  { code: 'fish-eye', label: 'Fish-eye', source: D2563 },
  { code: 'lack-of-fillout', label: 'Lack of fillout', source: D2563 },
  { code: 'orange-peel', label: 'Orange peel', source: D2563 },
  { code: 'pimple', label: 'Pimple', source: D2563 },
  { code: 'pit', label: 'Pit (pinhole)', source: D2563, alsoCalled: ['pinhole'] },
  { code: 'porosity', label: 'Porosity (pinholes)', source: D2563, alsoCalled: ['pinhole'] },
  { code: 'pre-gel', label: 'Pre-gel', source: D2563 },
  { code: 'resin-pocket', label: 'Resin pocket', source: D2563 },
  { code: 'resin-rich-edge', label: 'Resin-rich edge', source: D2563 },
  { code: 'shrink-mark', label: 'Shrink mark (sink)', source: D2563, alsoCalled: ['sink'] },
  { code: 'wash', label: 'Wash', source: D2563 },
  { code: 'wormhole', label: 'Wormhole', source: D2563 },
  { code: 'wrinkles', label: 'Wrinkles', source: D2563 },
  { code: 'scratch', label: 'Scratch', source: D2563 },
  { code: 'short', label: 'Short (incompletely filled)', source: D2563 },
  { code: 'prerelease', label: 'Prerelease', source: PRACTICE },
  { code: 'alligatoring', label: 'Alligatoring', source: PRACTICE },
  { code: 'catalyst-slug', label: 'Catalyst slug', source: PRACTICE },
  { code: 'undercure', label: 'Undercure', source: PRACTICE, alsoCalled: ['soft spot'] },
  { code: 'gouge', label: 'Gouge', source: PRACTICE },
  { code: 'print-through', label: 'Print-through', source: PRACTICE },
  { code: 'sag', label: 'Sag', source: PRACTICE },
  { code: 'dry-glass', label: 'Dry glass', source: PRACTICE },
  { code: 'disbond', label: 'Disbond', source: PRACTICE },
] as const satisfies readonly DefectKindEntry[];

/** The code of a defect kind. */
export type DefectKind = (typeof DEFECT_KINDS)[number]['code'];

/** Whether a text is the code of a defect kind. */
export const isDefectKind = (text: string): text is DefectKind => DEFECT_KINDS.some(({ code }) => code === text);

/**
 * The kinds a shop word may mean: none, one, or several between which the person must be asked.
 *
 * "Void" and "air bubble" are one kind; "pinhole" is a pit or a porosity. Matches codes, labels and shop words, any case.
 */
export const defectKindsCalled = (word: string): readonly DefectKind[] => {
  const sought = word.trim().toLowerCase();
  return DEFECT_KINDS.filter((kind: DefectKindEntry) =>
    [kind.code, kind.label, ...(kind.alsoCalled ?? [])].some((name) => name.toLowerCase() === sought),
  ).map(({ code }) => code);
};
