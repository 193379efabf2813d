/** The jobs of a plant, and who looks for a dealer. Apart from the schemas, so that a screen can know them without. */
export const ROLES = [
  'receiving',
  'laminator',
  'shift lead',
  'inspector',
  'patcher',
  'quality',
  'warranty',
  'dealer',
  'auditor',
  'administrator',
] as const;
export type Role = (typeof ROLES)[number];
