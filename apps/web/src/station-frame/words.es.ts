import type { stationEn } from './words.en.js';

/** The texts of the frame of the station and of its start, in Spanish. */
export const stationEs = {
  'station.title': 'Puesto',
  'station.start': 'Inicio',
  'station.tasks': 'Tareas',
  'station.nobody': 'Nadie tiene esta tableta',
  'station.unproved': 'sin comprobar',
  'station.noNetwork.never': 'Este navegador no puede iniciar la estación sin red.',
  'station.noNetwork.soon': 'Todavía no puede iniciar sin red: se están cargando sus archivos.',
  'station.noNetwork.ready': 'Lista para trabajar sin red.',
  'station.caution':
    'Vapor de estireno, MEKP: mascarilla, ventilador, gafas y guantes. Use esta tableta fuera de toda zona clasificada para equipo eléctrico, salvo que esté certificada para ella. Mandan la hoja de datos, las reglas del taller y las normas locales.',
  'station.newer': 'Hay una versión nueva: cargarla',
  'station.takeOver': 'Tomar esta tableta',
  'station.pin': 'PIN',
  'station.takeIt': 'Tomarla',
  'station.takeItByBadge': 'Tomarla con la credencial',
  'station.byBadge':
    'Sin red: basta la credencial. Lo que anote se guarda como sin comprobar, y usted lo confirma después con su PIN.',
  'station.task.layer': 'Anotar una capa',
  'station.task.layerHelp': 'según el plan, para varias piezas a la vez',
  'station.task.readings': 'Medir',
  'station.task.readingsHelp': 'película, dureza y espesor, punto por punto',
  'station.task.sign': 'Firmar un punto de espera',
  'station.task.signHelp': 'de una capa que hicieron otros',
  'station.task.bay': 'Defectos y reparaciones',
  'station.task.bayHelp': 'Anotar un defecto en el mapa del casco, retocar, reparar, aceptar lo que hicieron otros',
  'station.task.confirm': 'Confirmar anotaciones',
  'station.task.confirmHelp': 'lo que una tableta envió en su nombre sin PIN',
} satisfies Record<keyof typeof stationEn, string>;
