/** The texts of the search. */
export const searchEn = {
  'search.find': 'Find',
  'search.findWhat': 'Find a hull or a lot',
  'search.label': 'Hull number, HIN or lot, or part of it',
  'search.type':
    'Type a hull number, a HIN or a lot code. Our own lot codes and suppliers’ lot numbers are both looked at.',
  'search.hullsOf': 'Hulls whose number or HIN holds “{search}”',
  'search.lotsOf': "Lots whose code or supplier's lot holds “{search}”",
  'search.noHulls': 'No hull number or HIN holds “{search}”.',
  'search.noLots': "No lot code or supplier's lot holds “{search}”.",
  'search.typeLess': 'Type less of it, or check it against the label.',
  'search.shared': 'Which lots do these hulls share?',
  'search.sharedLots': 'shared lots',
  'search.numbers': 'Hull numbers or HINs',
  'search.numbersHint': 'One a line, or parted by commas.',
  'search.showShared': 'Show shared lots',
  'search.enterHulls':
    'Enter the hulls that came back with a like fault, two or more, to see what they have in common.',
  'search.heldBy': 'Lots held by {count, plural, one {# hull} other {# hulls}} entered',
  'search.noShared': 'No lot is recorded in these hulls. Record what was used in their layers first.',
  'search.note':
    'The lots that most of these hulls hold come first; among those, the ones that fewest others hold. Assumes a well-mixed tank. A shared lot is associated with what these hulls have in common; that is no finding about the lot.',
  'search.ofThese': 'Of these hulls',
  'search.ofOthers': 'Other hulls',
} as const;
