import type { homeEn } from './words.en.js';

/** The texts of the first page in Spanish. */
export const homeEs = {
  'home.title': 'Inicio',
  'home.heading': 'De qué está hecho cada casco',
  'home.lead':
    'Qué lote entró en qué capa de qué casco, qué se midió, qué se encontró mal y cómo se corrigió. Cuando un lote resulta malo, los cascos que lo contienen.',
  'home.where': 'Adónde ir',
  'home.toHulls':
    'Cada casco: sus capas, lotes, lecturas, defectos y reparaciones, y el registro de construcción en PDF.',
  'home.toLots': 'Cada lote de material: de qué está hecho y qué cascos lo contienen.',
  'home.toSearch': 'Busque un casco o un lote por su número; busque los lotes que comparten varios cascos.',
  'home.toOwnHulls': 'Sus cascos: certificados, garantía, reclamos y reparaciones externas.',
  'home.station': 'Estación',
  'home.toStation': 'En la tableta del taller: laminar, leer, firmar, inspeccionar y reparar, también sin red.',
  'home.toClaims': 'Lo que avisan concesionarios y dueños, y lo que se decide.',
  'home.toHolds': 'Lo que está retenido, los cascos en los que entró y qué se hace con cada uno.',
  'home.api': 'Página de la API',
  'home.toApi': 'Para programas: cada llamada con sus campos.',
  'home.newest': 'Cascos más nuevos',
  'home.newestCaption': 'Los últimos cascos iniciados',
  'home.notReady': 'El servicio no dice si está listo. Cargue la página de nuevo.',
  'home.demoLoaded': 'La planta de demostración está cargada. Todos sus cascos, lotes y personas son inventados.',
  'home.demoFailed': 'La planta de demostración no se cargó: {detail}. Lo registrado se conserva.',
  'home.noReason': 'no se indicó el motivo',
  'home.demoLoading':
    'La planta de demostración se está cargando: {done} de {total} pasos. Mientras tanto puede mirar.',
} satisfies Record<keyof typeof homeEn, string>;
