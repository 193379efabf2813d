import type { manyMapEn } from './words.en.js';

/** The texts of the hull map of many hulls, in Spanish. */
export const manyMapEs = {
  'manyMap.nav': 'Mapa',
  'manyMap.title': 'Mapa del casco',
  'manyMap.models': 'los modelos para elegir',
  'manyMap.noModel':
    'Aún no hay ningún modelo registrado y por eso no hay piel que dibujar. En cuanto un modelo tenga cascos y se encuentre un defecto en uno, se verá aquí; vea los <hulls>cascos</hulls>.',
  'manyMap.mold': 'Molde',
  'manyMap.lot': 'Piezas que contienen el lote',
  'manyMap.from': 'Encontrado desde',
  'manyMap.until': 'Encontrado hasta',
  'manyMap.onMap': 'los defectos del mapa',
  'manyMap.defects': 'defectos',
  'manyMap.keys': 'Mapa del casco: las flechas lo mueven, más y menos lo amplían o reducen, 0 lo muestra entero',
  'manyMap.zoomIn': 'Ampliar',
  'manyMap.zoomOut': 'Reducir',
  'manyMap.showAll': 'Todo',
  'manyMap.choose': 'Arrastrar elige un área',
  'manyMap.shades':
    'Cada punto es un defecto; un cuadrado de {size} mm es más oscuro cuantos más tiene. La rueda o dos dedos amplían.',
  'manyMap.found':
    '{found, plural, =0 {Ningún defecto cumple} one {# defecto} other {# defectos}} en {partsWith} de {parts, plural, one {# pieza} other {# piezas}} que cumplen.',
  'manyMap.fullest':
    'El cuadrado más lleno tiene {count, plural, one {# defecto} other {# defectos}} en {parts, plural, one {# pieza} other {# piezas}}: {area}.',
  'manyMap.inArea':
    'En el área: {count, plural, one {# defecto} other {# defectos}} en {parts, plural, one {# pieza} other {# piezas}}.',
  'manyMap.newest':
    'Hay más de los que se pueden dibujar: se muestran los {count} más nuevos. Limite el mapa para ver otros.',
  'manyMap.notWhy':
    'El mapa muestra dónde se encontraron y registraron defectos, no por qué surgieron. Lo que se miró más a menudo muestra más.',
  'manyMap.squares': 'Tabla de los cuadrados más llenos',
  'manyMap.squaresCaption': 'Los {count} más llenos de {all} cuadrados con algún defecto',
  'manyMap.parts': 'Piezas',
  'manyMap.theList': 'La lista',
  'manyMap.list': 'Listar sus defectos',
  'manyMap.surface': 'Superficie',
  'manyMap.shell': 'casco exterior',
  'manyMap.alongFrom': 'Desde el espejo de popa (o hacia arriba desde la quilla), mm',
  'manyMap.alongTo': 'hasta, mm',
  'manyMap.acrossFrom': 'Desde la quilla, mm',
  'manyMap.acrossTo': 'hasta, mm desde la quilla',
  'manyMap.portIsPositive': 'Babor es positivo, estribor negativo',
  'manyMap.wholeSkin': 'Dejar el área',
  'manyMap.listed': 'Defectos del mapa, los más nuevos primero',
  'manyMap.listedIn': 'Defectos del área, los más nuevos primero: {area}',
  'manyMap.noneThere': 'Ningún defecto cumple. Elija un área mayor o limite menos el mapa.',
  'manyMap.onShell': '{side}, de {from} a {to} mm del espejo de popa, de {near} a {far} mm de la quilla',
  'manyMap.onTransom':
    'espejo de popa, {side}, de {from} a {to} mm de altura, de {near} a {far} mm de la línea de crujía',
} satisfies Record<keyof typeof manyMapEn, string>;
