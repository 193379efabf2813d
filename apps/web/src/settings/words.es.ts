import type { settingsEn } from './words.en.js';

/** The texts of the settings in Spanish. */
export const settingsEs = {
  'settings.lead': 'Estas elecciones se guardan en este equipo, para este navegador.',
  'settings.language': 'Idioma',
  'settings.texts': 'Textos de esta página',
  'settings.languageHow': 'Lo que escribieron el servicio y las personas queda como se escribió.',
  'settings.look': 'Aspecto',
  'settings.theme': 'Tema',
  'settings.theme.system': 'como el equipo',
  'settings.theme.light': 'claro',
  'settings.theme.dark': 'oscuro',
  'settings.theme.glare': 'sol',
  'settings.units': 'Unidades',
  'settings.unitsHow':
    'Cada cifra conserva lo que se anotó: en otra unidad se muestra junto a la anotada. Se juzga lo anotado, no lo que se muestra.',
  'settings.film': 'Película',
  'settings.temperature': 'Temperatura',
  'settings.mass': 'Masa',
  'settings.recorded': 'como se anotó',
} satisfies Record<keyof typeof settingsEn, string>;
