import type { ownHullsEn } from './words.en.js';

/** The texts of a dealer's own hulls, in Spanish. */
export const ownHullsEs = {
  'ownHulls.title': 'Cascos propios',
  'ownHulls.what': 'cascos',
  'ownHulls.caption': 'Cascos que tiene usted, o que tuvo el último',
  'ownHulls.life': 'Desde que salió',
  'ownHulls.none': 'Ningún casco consta todavía como suyo. Aparece cuando el constructor anota que está con usted.',
} satisfies Record<keyof typeof ownHullsEn, string>;
