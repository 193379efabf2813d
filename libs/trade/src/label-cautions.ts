import type { MaterialRole } from './material-roles.js';

const DEFERRAL = 'Its data sheet and local codes come first.';
const STYRENE = 'Flammable, gives off styrene: ventilate, no flame, spark or static.';

const WORDS: Readonly<Partial<Record<MaterialRole | 'mix', string>>> = {
  'gel coat': STYRENE,
  resin: STYRENE,
  putty: STYRENE,
  'bonding paste': STYRENE,
  catalyst: 'Burns skin and eyes, feeds fire: keep cool, apart from promoter, metals and anything that burns.',
  promoter: 'Keep apart from catalyst: never mix the two directly.',
  release: 'May be flammable: ventilate, no flame or spark.',
  mix: `${STYRENE} Makes heat as it cures: never pour it back, let leftovers cool safely outdoors.`,
};

/**
 * A caution short enough for a label: of a material by its role, or of a bucket (`mix`); null where none is usual.
 *
 * Common practice, the short form of CAUTIONS. It reminds; it is not the hazard label that a container has to carry by
 * law, and it defers to the data sheet and local codes.
 */
export const labelCaution = (of: MaterialRole | 'mix'): string | null => {
  const words = WORDS[of];
  return words === undefined ? null : `${words} ${DEFERRAL}`;
};
