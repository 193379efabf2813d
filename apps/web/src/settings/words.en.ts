/** The texts of the settings. */
export const settingsEn = {
  'settings.lead': 'These choices are kept on this device, for this browser.',
  'settings.language': 'Language',
  'settings.texts': 'Texts of this page',
  'settings.languageHow': 'What the service and people wrote stays as it was written.',
  'settings.look': 'Look',
  'settings.theme': 'Theme',
  'settings.theme.system': 'as the device',
  'settings.theme.light': 'light',
  'settings.theme.dark': 'dark',
  'settings.theme.glare': 'glare',
  'settings.units': 'Units',
  'settings.unitsHow':
    'Each figure keeps what was entered: in another unit it is shown with the entered one beside it. Judging is done on what was entered, not on what is shown.',
  'settings.film': 'Film',
  'settings.temperature': 'Temperature',
  'settings.mass': 'Mass',
  'settings.recorded': 'as entered',
} as const;
