import type { searchEn } from './words.en.js';

/** The texts of the search in Spanish. */
export const searchEs = {
  'search.find': 'Buscar',
  'search.findWhat': 'Buscar un casco o un lote',
  'search.label': 'Número de casco, HIN o lote, o una parte',
  'search.type':
    'Escriba un número de casco, un HIN o un código de lote. Se miran nuestros códigos y los números de lote de los proveedores.',
  'search.hullsOf': 'Cascos cuyo número o HIN contiene «{search}»',
  'search.lotsOf': 'Lotes cuyo código o lote del proveedor contiene «{search}»',
  'search.noHulls': 'Ningún número de casco ni HIN contiene «{search}».',
  'search.noLots': 'Ningún código de lote ni lote del proveedor contiene «{search}».',
  'search.typeLess': 'Escriba menos, o compárelo con la etiqueta.',
  'search.shared': '¿Qué lotes comparten estos cascos?',
  'search.sharedLots': 'lotes compartidos',
  'search.numbers': 'Números de casco o HIN',
  'search.numbersHint': 'Uno por línea, o separados por comas.',
  'search.showShared': 'Mostrar lotes compartidos',
  'search.enterHulls':
    'Escriba los cascos que volvieron con una falla parecida, dos o más, para ver qué tienen en común.',
  'search.heldBy': 'Lotes que contienen {count, plural, one {# casco escrito} other {# cascos escritos}}',
  'search.noShared': 'No hay ningún lote registrado en estos cascos. Registre primero qué se usó en sus capas.',
  'search.note':
    'Primero vienen los lotes que contiene la mayoría de estos cascos; entre ellos, los que menos contienen otros. Supone un tanque bien mezclado. Un lote compartido está asociado con lo que estos cascos tienen en común; eso no es un juicio sobre el lote.',
  'search.ofThese': 'De estos cascos',
  'search.ofOthers': 'Otros cascos',
} satisfies Record<keyof typeof searchEn, string>;
