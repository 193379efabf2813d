import type { tracesEn } from './words.en.js';

/** The texts of traces, in Spanish. */
export const tracesEs = {
  'traces.nav': 'Rastros',
  'traces.title': 'Rastros',
  'traces.lead':
    'De un lote a cada casco que contiene algo de él, por tanques, mezclas y kits; o de los cascos a los lotes de los que están hechos.',
  'traces.whereTo': '¿Adónde fue este lote?',
  'traces.whereFrom': '¿De qué están hechos estos cascos?',
  'traces.begin': 'Rastrear',
  'traces.codeOfLot': 'Código del lote',
  'traces.numbers': 'Números de casco o HIN',
  'traces.also': 'Y estos cascos',
  'traces.alsoHint': 'Varios con comas, 20 cascos como máximo',
  'traces.titleOf': 'Rastro de {of}',
  'traces.ofThis': 'el rastro de {of}',
  'traces.noLot': 'No existe el lote {lot}. Revise su código o búsquelo en la <lots>lista de lotes</lots>.',
  'traces.noHull': 'No existe el casco {number}. Revise su número o búsquelo en la <hulls>lista de cascos</hulls>.',
  'traces.ofLot':
    'El lote {lot} está en {hulls, plural, =0 {ningún casco} one {# casco} other {# cascos}}{parts, plural, =0 {} one { y # pieza que no está en ninguno} other { y # piezas que no están en ninguno}}.',
  'traces.most': 'El casco {hull} contiene lo máximo: {kg}.',
  'traces.possiblyIn':
    '{count, plural, one {# casco o pieza quizá también lo contenga} other {# cascos o piezas quizá también lo contengan}}: allí se usó material sin identificar.',
  'traces.ofHulls':
    'En {hulls} hay {kg} de material, de {count, plural, one {# lote recibido} other {# lotes recibidos}}.',
  'traces.leftOut':
    'Hay más de lo que se dibuja: se dejan fuera {lots, plural, =0 {} one {# lote y } other {# lotes y }}{hulls, plural, =0 {ningún casco} one {# casco o pieza} other {# cascos o piezas}} con menos.',
  'traces.drawing': 'Dibujo del rastro: las flechas van de uno a otro, Escape lo muestra todo',
  'traces.keys': 'Pulse un lote o un casco para ver solo sus vías; también con las flechas.',
  'traces.picked': '{code}: {kg}, desde {into} y hacia {out}. Las flechas siguen; Escape lo muestra todo.',
  'traces.showAll': 'Mostrar todas las vías',
  'traces.column.received': '{count, plural, one {# lote recibido} other {# lotes recibidos}}',
  'traces.column.tank': '{count, plural, one {# llenado de tanque} other {# llenados de tanque}}',
  'traces.column.made': '{count, plural, one {# mezcla o kit} other {# mezclas, kits}}',
  'traces.column.hulls': '{count, plural, one {# casco} other {# cascos}}',
  'traces.possibly': 'quizá',
  'traces.widthsOfLot':
    'Los anchos son kilogramos de este lote en cada vía, a una misma escala. Sale menos de lo que entró donde quedó o se perdió algo.',
  'traces.widthsOfHulls': 'Los anchos son kilogramos que están en estos cascos, a una misma escala.',
  'traces.csv': 'Guardar como CSV',
  'traces.paper': 'Documento',
  'traces.report': 'Informe del lote, PDF',
  'traces.drawn': 'Dibujo',
  'traces.pdf': 'Este rastro, PDF',
  'traces.waysTable': 'Tabla de las {count} vías',
  'traces.ways': 'vías',
  'traces.waysCaption': 'Cada vía con sus kilogramos, las más anchas primero',
  'traces.from': 'Desde',
  'traces.into': 'Hacia',
  'traces.kg': 'Masa',
  'traces.share': 'Mayor proporción en una capa',
  'traces.pick': 'Sus vías solas: {code}',
  'traces.pickShort': 'Sus vías',
  'traces.hullsAndParts': 'cascos y piezas',
  'traces.tableOf': 'Todo: {what}, primero con más kilogramos',
  'traces.tableOfPicked': 'De {picked}: {what}, primero con más kilogramos',
  'traces.noHulls': 'Ningún casco contiene aún nada de él. Los cascos aparecen cuando una capa dice que se usó.',
  'traces.noLots':
    'Aún no hay ningún lote registrado en estos cascos. Los lotes aparecen cuando una capa dice qué se usó en ella.',
  'traces.inNoHull': '{part}, en ningún casco',
} satisfies Record<keyof typeof tracesEn, string>;
