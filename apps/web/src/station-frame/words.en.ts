/** The texts of the frame of the station and of its start. */
export const stationEn = {
  'station.title': 'Station',
  'station.start': 'Start',
  'station.tasks': 'Tasks',
  'station.nobody': 'Nobody has this tablet',
  'station.unproved': 'not proved',
  'station.caution':
    'Styrene vapour, MEKP: mask on, fan on, goggles and gloves. Use this tablet outside any area classified for electrical equipment unless it is rated for it. The data sheet, shop rules and local codes come first.',
  'station.newer': 'A new version is here: load it',
  'station.takeOver': 'Take over this tablet',
  'station.pin': 'PIN',
  'station.takeIt': 'Take it over',
  'station.takeItByBadge': 'Take it over by badge',
  'station.byBadge':
    'No network: the badge alone will do. What you enter is kept as not proved, and you confirm it later with your PIN.',
  'station.task.layer': 'Enter a layer',
  'station.task.layerHelp': 'as scheduled, for several parts at once',
  'station.task.readings': 'Take readings',
  'station.task.readingsHelp': 'film, hardness and thickness, spot by spot',
  'station.task.sign': 'Sign a hold point',
  'station.task.signHelp': 'of a layer that others made',
  'station.task.bay': 'Defects and repairs',
  'station.task.bayHelp': 'Log a defect on the hull map, touch up, repair, accept what others did',
  'station.task.confirm': 'Confirm entries',
  'station.task.confirmHelp': 'what a tablet sent in your name without a PIN',
} as const;
