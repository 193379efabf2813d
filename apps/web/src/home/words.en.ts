/** The texts of the first page. */
export const homeEn = {
  'home.title': 'Start',
  'home.heading': 'What each hull is made of',
  'home.lead':
    'Which lot went into which layer of which hull, what was measured, what was found wrong and how it was put right. When a lot turns out bad, the hulls that hold it.',
  'home.where': 'Where to go',
  'home.toHulls': 'Each hull: its layers, lots, readings, defects and repairs, and the build record as PDF.',
  'home.toLots': 'Each lot of material: what it is made of, and the hulls that hold it.',
  'home.toSearch': 'Find a hull or a lot by its number; find the lots that some hulls share.',
  'home.api': 'API page',
  'home.toApi': 'How facts are recorded until this page can: each call with its fields.',
  'home.newest': 'Newest hulls',
  'home.newestCaption': 'The hulls begun last',
  'home.notReady': 'The service does not say whether it is ready. Load the page again.',
  'home.demoLoaded': 'The demo plant is loaded. All of its hulls, lots and people are invented.',
  'home.demoFailed': 'The demo plant did not load: {detail}. What was recorded stays.',
  'home.noReason': 'no reason was given',
  'home.demoLoading': 'The demo plant is loading: {done} of {total} steps. You can look around meanwhile.',
} as const;
