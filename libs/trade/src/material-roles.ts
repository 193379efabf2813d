/** What a material does in a laminate. Shares are taken among lots of one role in one layer. */
export const MATERIAL_ROLES = [
  'gel coat',
  'resin',
  'catalyst',
  'promoter',
  'inhibitor',
  'pigment',
  'glass',
  'core',
  'board',
  'putty',
  'bonding paste',
  'release',
] as const;

/** What a material does in a laminate. */
export type MaterialRole = (typeof MATERIAL_ROLES)[number];

/** Whether a text names a material role. */
export const isMaterialRole = (text: string): text is MaterialRole =>
  (MATERIAL_ROLES as readonly string[]).includes(text);
