import type { tankEn } from './tank-words.en.js';

/** Texts of tanks, in Spanish. */
export const tankEs = {
  'store.registerTank': 'Registrar un tanque',
  'store.tankCode': 'Código del tanque',
  'store.capacityKg': 'Capacidad, kg',
  'store.tankRegistered': 'El tanque {tank} está anotado.',
  'store.tankEmpty': 'vacío; caben {capacity}',
  'store.tankHolds': '{left} de {capacity}, lote {lot}',
  'store.tankScale': 'Todos los tanques están a la misma escala: el área son kilogramos.',
  'store.emptyTankHelp': 'Está vacío. Un llenado inicia un lote nuevo, hecho de lo que entra.',
  'store.emptyIt': 'Vaciarlo',
  'store.emptyCaution':
    'Los vapores de resina y estireno son nocivos e inflamables, y un tanque es un espacio cerrado: ventile, aleje las chispas y deje entrar solo a quien esté formado y autorizado, según las normas locales.',
  'store.cleaned': 'También se limpió',
  'store.recordEmptied': 'Anotar que se vació',
  'store.emptySure':
    'Tanque {tank}: lo que el libro aún tiene en él, {book}, cuenta como perdido desde entonces. El siguiente llenado empieza sin remanente.',
  'store.emptied': 'El tanque {tank} está vacío.',
} satisfies Record<keyof typeof tankEn, string>;
