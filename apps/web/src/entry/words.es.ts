import type { entryEn } from './words.en.js';

/** The texts of recording something, in Spanish. */
export const entryEs = {
  'entry.choose': 'elija',
  'entry.when': 'Cuándo, si no es ahora (reloj de la planta)',
  'entry.sure': 'Confirmar',
  'entry.back': 'Volver',
  'entry.yes': 'Sí, anotarlo',
  'entry.yesDo': 'Sí, hacerlo',
  'entry.notRecorded': 'No se anotó.',
  'entry.kept': 'Lo escrito sigue aquí. Corríjalo y envíelo de nuevo: se anota una sola vez.',
  'entry.unreachable': 'El servicio no responde. Compruebe que funciona y que este equipo llega a él.',
  'entry.unit': 'Unidad',
  'entry.basis': 'Cómo se sabe',
  'entry.found': 'Se guarda tal como ocurrió. Esto no cumple una regla y espera a calidad:',
  'entry.warned': 'Hay que mirarlo:',
  'entry.rowOf': '{name}, {number}',
  'entry.forRoles': '{what}: para las funciones {roles}.',
} satisfies Record<keyof typeof entryEn, string>;
