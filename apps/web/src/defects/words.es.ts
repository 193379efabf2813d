import type { defectsEn } from './words.en.js';

/** The texts of the page of a defect in Spanish. */
export const defectsEs = {
  'defects.toRepair': 'Repare {mark} o juzgue lo hecho <station>en el puesto</station>.',
  'defects.atStation': 'Vea {mark} <station>en el puesto</station>.',
  'defects.photos': 'Fotos',
  'defects.noPhotos': 'No se tomó ninguna foto.',
  'defects.title': 'Defecto',
  'defects.name': 'Defecto {mark} de {part}',
  'defects.what': 'el defecto y los lotes en su lugar',
  'defects.notThere':
    'No existe ese defecto. Abra el casco en que está y siga su marca: <list>todos los cascos</list>.',
  'defects.inNoHull': 'aún en ningún casco',
  'defects.lots': 'Lotes en su lugar',
  'defects.noLots': 'No hay ningún lote registrado ahí. Registre primero qué se usó en la capa.',
  'defects.caption': 'Lotes en la capa y el lugar del defecto',
  'defects.associated': 'Un lote en el lugar de un defecto está asociado con él; eso no es un juicio sobre el lote.',
  'defects.there': 'Allí',
  'defects.share': 'Parte de la capa',
  'defects.way': 'Por qué vía',
  'defects.others': 'Otros cascos que lo contienen',
  'defects.othersCount': '{count, plural, one {# casco} other {# cascos}}: {hulls}',
  'defects.andMore': 'y {count} más',
} satisfies Record<keyof typeof defectsEn, string>;
