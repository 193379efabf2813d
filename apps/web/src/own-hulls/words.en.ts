/** The texts of a dealer's own hulls. */
export const ownHullsEn = {
  'ownHulls.title': 'Own hulls',
  'ownHulls.what': 'hulls',
  'ownHulls.caption': 'Hulls that are with you, or were last',
  'ownHulls.life': 'Since it left',
  'ownHulls.none': 'No hull is on record as yours yet. It appears when the builder records that it is with you.',
} as const;
