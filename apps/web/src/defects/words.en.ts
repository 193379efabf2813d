/** The texts of the page of a defect. */
export const defectsEn = {
  'defects.title': 'Defect',
  'defects.name': 'Defect {mark} of {part}',
  'defects.what': 'the defect and the lots at its place',
  'defects.notThere': 'There is no such defect. Open the hull it is on and follow its mark: <list>all hulls</list>.',
  'defects.inNoHull': 'in no hull yet',
  'defects.lots': 'Lots at its place',
  'defects.noLots': 'No lot is recorded there. Record what was used in the layer first.',
  'defects.caption': 'Lots in the layer and place of the defect',
  'defects.associated': 'A lot at the place of a defect is associated with it; that is no finding about the lot.',
  'defects.there': 'There',
  'defects.share': 'Share of the layer',
  'defects.way': 'By which way',
  'defects.others': 'Other hulls that hold it',
  'defects.othersCount': '{count, plural, one {# hull} other {# hulls}}: {hulls}',
  'defects.andMore': 'and {count} more',
} as const;
