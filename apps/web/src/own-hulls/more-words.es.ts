import type { ownEn } from './more-words.en.js';

/** The texts of what a dealer is told, and of claims on own hulls, in Spanish. */
export const ownEs = {
  'own.news': 'Para tomar nota',
  'own.theNews': 'lo que el constructor le comunicó',
  'own.noNews': 'Nada nuevo desde su último acuse.',
  'own.noted': '{count, plural, one {# ya con acuse} other {# ya con acuse}}',
  'own.notedOn': 'Con acuse',
  'own.withdrawn': 'El certificado {number}, emisión {issue, number}, fue retirado',
  'own.since': 'Lo que imprimía ya no consta así:',
  'own.notice': 'Aviso {notice}',
  'own.acknowledge': 'Acusar recibo, casco {hull}',
  'own.acknowledged': 'Acuse registrado.',
  'own.theHull': 'el casco {number}',
  'own.claims': 'Reclamaciones',
  'own.theClaims': 'las reclamaciones',
  'own.noClaims': 'No se presentó ninguna reclamación de este casco.',
  'own.file': 'Presentar una reclamación',
  'own.fileDo': 'Presentarla',
  'own.filed': 'Presentada como {mark}. Añada las fotos que se piden.',
  'own.notDecided': 'Aún sin decidir.',
  'own.decided': 'Decidida: {decision}.',
  'own.addPicture': 'Añadir la foto: {shows}',
  'own.pictureKept': 'La foto se conserva.',
} satisfies Record<keyof typeof ownEn, string>;
