/** The texts of the hull map of many hulls. */
export const manyMapEn = {
  'manyMap.nav': 'Map',
  'manyMap.title': 'Hull map',
  'manyMap.models': 'the models to choose from',
  'manyMap.noModel':
    'No model is registered yet, so there is no skin to draw. Once a model has hulls and a defect is found on one, it shows here; see the <hulls>hulls</hulls>.',
  'manyMap.mold': 'Mold',
  'manyMap.lot': 'Parts that hold lot',
  'manyMap.from': 'Found from',
  'manyMap.until': 'Found until',
  'manyMap.onMap': 'the defects on the map',
  'manyMap.defects': 'defects',
  'manyMap.keys': 'Hull map: arrow keys move it, plus and minus enlarge it, 0 shows all of it',
  'manyMap.zoomIn': 'Enlarge',
  'manyMap.zoomOut': 'Make smaller',
  'manyMap.showAll': 'All of it',
  'manyMap.choose': 'Drag chooses an area',
  'manyMap.shades':
    'Each dot is a defect; a square of {size} mm is darker the more it has. The wheel or two fingers enlarge.',
  'manyMap.found':
    '{found, plural, =0 {No defect fits} one {# defect} other {# defects}} on {partsWith} of {parts, plural, one {# part} other {# parts}} that fit.',
  'manyMap.fullest':
    'The fullest square has {count, plural, one {# defect} other {# defects}} on {parts, plural, one {# part} other {# parts}}: {area}.',
  'manyMap.inArea':
    'In the area: {count, plural, one {# defect} other {# defects}} on {parts, plural, one {# part} other {# parts}}.',
  'manyMap.newest': 'There are more than can be drawn: the newest {count} are shown. Narrow the map to see others.',
  'manyMap.notWhy':
    'The map shows where defects were found and recorded, not why they arose. What was looked at more often shows more.',
  'manyMap.squares': 'Table of the fullest squares',
  'manyMap.squaresCaption': 'The {count} fullest of {all} squares with a defect',
  'manyMap.parts': 'Parts',
  'manyMap.theList': 'The list',
  'manyMap.list': 'List its defects',
  'manyMap.surface': 'Surface',
  'manyMap.shell': 'shell',
  'manyMap.alongFrom': 'From the transom (or up from the keel), mm',
  'manyMap.alongTo': 'to, mm',
  'manyMap.acrossFrom': 'Out from the keel, mm',
  'manyMap.acrossTo': 'out to, mm',
  'manyMap.portIsPositive': 'Port is positive, starboard negative',
  'manyMap.wholeSkin': 'Leave the area',
  'manyMap.listed': 'Defects on the map, the newest first',
  'manyMap.listedIn': 'Defects in the area, the newest first: {area}',
  'manyMap.noneThere': 'No defect fits. Choose a larger area, or narrow the map less.',
  'manyMap.onShell': '{side}, {from} to {to} mm from the transom, {near} to {far} mm from the keel',
  'manyMap.onTransom': 'transom, {side}, {from} to {to} mm up, {near} to {far} mm from the centreline',
} as const;
