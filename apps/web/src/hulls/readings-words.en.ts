/** The texts of readings and of the hull map. */
export const readingsEn = {
  'readings.head': 'Readings',
  'readings.noneRequired': 'none required',
  'readings.notRead': '{what}: not read yet, {count, plural, one {# spot} other {# spots}} asked for, {limits}',
  'readings.gauge': 'Gauge {gauges}.',
  'readings.readBy': 'Read by {by}.',
  'readings.allInside': 'each of {all} spots inside',
  'readings.someInside': 'the other {inside} of {all} spots inside',
  'readings.underConcession': '{verdict}, concession {concession}',
  'readings.crossesLimit': '{verdict}; the gauge step crosses the limit',
  'map.caption':
    'The skin unrolled, girth by station, seen from {from}: bow to the {bow}, {length} m long, to scale in itself. Chine: thin line; waterline: long dashes.',
  'map.transom': 'The transom is folded back at the stern.',
  'map.from.outsideBelow': 'outside, from below',
  'map.from.insideAbove': 'inside, from above',
  'map.from.outsideAbove': 'outside, from above',
  'map.left': 'left',
  'map.right': 'right',
  'map.label': 'Hull map of {part} with {count, plural, one {# defect} other {# defects}}: {defects}.',
  'map.spot': '{mark}: {kind}, {state}',
} as const;
