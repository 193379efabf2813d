import type { readingsEn } from './readings-words.en.js';

/** The texts of readings and of the hull map in Spanish. */
export const readingsEs = {
  'readings.head': 'Lecturas',
  'readings.noneRequired': 'no se pide ninguna',
  'readings.notRead': '{what}: aún sin leer, se {count, plural, one {pide # punto} other {piden # puntos}}, {limits}',
  'readings.gauge': 'Galga {gauges}.',
  'readings.readBy': 'Leído por {by}.',
  'readings.allInside': 'los {all} puntos dentro',
  'readings.someInside': 'los otros {inside} de {all} puntos, dentro',
  'readings.underConcession': '{verdict}, concesión {concession}',
  'readings.crossesLimit': '{verdict}; el paso de la galga cruza el límite',
  'map.caption':
    'El forro desplegado, contorno por sección, visto desde {from}: proa a la {bow}, {length} m de eslora, a escala en sí mismo. Codillo: línea fina; línea de flotación: trazos largos.',
  'map.transom': 'El espejo de popa está abatido en la popa.',
  'map.from.outsideBelow': 'fuera, por debajo',
  'map.from.insideAbove': 'dentro, por arriba',
  'map.from.outsideAbove': 'fuera, por arriba',
  'map.left': 'izquierda',
  'map.right': 'derecha',
  'map.label': 'Mapa de {part} con {count, plural, one {# defecto} other {# defectos}}: {defects}.',
  'map.spot': '{mark}: {kind}, {state}',
} satisfies Record<keyof typeof readingsEn, string>;
