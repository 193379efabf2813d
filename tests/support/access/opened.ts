import { MATERIALS, SCHEDULES, SKINS } from '../shop-stock.js';
import type { Cast } from './cast.js';
import { lot } from './jobs.js';

/** Registers what the plant works by, each thing by whose job it is: materials, a model with schedules, molds, a gauge. */
export const openShop = async (cast: Cast): Promise<void> => {
  for (const material of MATERIALS) await cast.recorded('quality', '/api/materials', material);
  await cast.recorded('quality', '/api/models', { code: 'TS86', name: 'TS 86, open, 8.6 m', skins: SKINS });
  for (const schedule of SCHEDULES) await cast.recorded('quality', '/api/models/TS86/schedules', schedule);
  await cast.recorded('quality', '/api/molds', { code: 'M-86-1', model: 'TS86', partKind: 'hull molding' });
  await cast.recorded('quality', '/api/molds', { code: 'M-86-D', model: 'TS86', partKind: 'deck' });
  await cast.recorded('quality', '/api/equipment', { code: 'MG-1', kind: 'gauge', description: 'Mil gauge' });
};

/** Books in the lots that a hull molding is made of. */
export const stockShop = async (cast: Cast): Promise<void> => {
  await cast.recorded('receiving', '/api/lots', lot('GEL-1', 'GEL-W'));
  await cast.recorded('receiving', '/api/lots', lot('RES-1', 'RES-VE'));
  await cast.recorded('receiving', '/api/lots', lot('MAT-1', 'MAT-450'));
};
