import type { labelsEn } from './words.en.js';

/** The texts of printing labels, in Spanish. */
export const labelsEs = {
  'labels.title': 'Etiquetas',
  'labels.of': 'Etiqueta de',
  'labels.codes': 'Códigos, uno por línea',
  'labels.codesHint': 'Como constan: una mezcla y un kit son lotes.',
  'labels.preview': 'Ver la hoja',
  'labels.empty':
    'Elija de qué son las etiquetas y escriba sus códigos. Desde un lote, un envase, una pieza, un casco, un equipo o una persona, «Imprimir la etiqueta» lo rellena.',
  'labels.theStock': 'los tipos de etiqueta',
  'labels.stock': 'Tipo',
  'labels.roll': 'rollo, {width} × {height} mm',
  'labels.sheet': '{paper}, {width} × {height} mm, {count} por hoja',
  'labels.skip': 'Puestos ya usados',
  'labels.skipHint': 'En la primera hoja, fila por fila desde arriba a la izquierda.',
  'labels.make': '{count, plural, one {Hacer el PDF de # etiqueta} other {Hacer el PDF de # etiquetas}}',
  'labels.thePdf': 'el PDF de las etiquetas',
  'labels.made': 'El PDF está hecho.',
  'labels.open': 'Abrirlo',
  'labels.save': 'Guardarlo',
  'labels.pages':
    '{count, plural, one {# etiqueta} other {# etiquetas}} en {pages, plural, one {# página} other {# páginas}}. Dónde queda cada una; lo que lleva está en el PDF.',
  'labels.fullSize':
    'Imprima a tamaño real, sin escalar, y pruebe antes en papel común: las medidas son práctica común, de memoria.',
} satisfies Record<keyof typeof labelsEn, string>;
