import type { skinEn } from './words.en.js';

/** The texts of the hull map that is touched, in Spanish. */
export const skinEs = {
  'map.touch':
    'Mapa de {part} con {count, plural, one {# defecto} other {# defectos}}. Toque donde está el nuevo, o escriba las distancias abajo.',
  'map.loupe': 'El lugar de la marca, más de cerca',
  'map.loupeKeys':
    'Toque para situar con precisión, arrastre para mirar alrededor, dos dedos para acercar. Teclas: las flechas mueven la marca, con Mayús diez pasos; + y − acercan o alejan.',
  'map.nudge': 'Mover la marca',
  'map.move.up': 'Arriba {step} mm',
  'map.move.down': 'Abajo {step} mm',
  'map.move.left': 'A la izquierda {step} mm',
  'map.move.right': 'A la derecha {step} mm',
  'map.step': 'Cada pulsación mueve {step} mm. Cambiar.',
  'map.zoom': 'Mirar de más cerca o de más lejos',
  'map.nearer': 'Más cerca',
  'map.further': 'Más lejos',
  'map.mm': '{mm} mm',
  'map.off': 'No está en el forro:',
  'map.surface': 'Superficie',
  'map.surface.shell': 'forro',
  'map.surface.transom': 'espejo de popa',
  'map.side': 'Banda',
  'map.fromTransom': 'Desde el espejo, mm',
  'map.fromKeel': 'Desde la quilla por el forro, mm',
  'map.offCentre': 'Desde la línea de crujía, mm',
  'map.up': 'Hacia arriba desde la quilla, mm',
  'map.typed': 'Escribir las distancias',
  'map.at': '{side} {height}',
  'map.m.fromTransom': '{m} m desde el espejo',
  'map.m.fromKeel': '{m} m desde la quilla',
  'map.m.offCentre': '{m} m desde la crujía',
  'map.m.up': '{m} m hacia arriba',
  'map.belowChine': '{mm} mm bajo el codillo',
  'map.aboveChine': '{mm} mm sobre el codillo',
} satisfies Record<keyof typeof skinEn, string>;
