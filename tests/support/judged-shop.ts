import type { NonconformityPage } from '@hull-record/contracts';
import { type Shop } from './shop.js';

/** A shop with a resin whose data sheet names what it is judged by, a catalyst, and a hull of two layers of that resin. */
export const openJudgedShop = async (shop: Shop): Promise<void> => {
  const sheet = {
    catalystWindow: { min: 1.2, max: 2.4, unit: '%' },
    layUpWindow: { min: 1, max: 24, unit: 'h' },
    minimumBarcol: 40,
    dataSheet: 'Barrier resin, issue 1',
  };
  await shop.act('/api/materials', {
    code: 'RES-B',
    name: 'Barrier resin',
    role: 'resin',
    densityKgPerL: 1.1,
    makerData: sheet,
  });
  await shop.act('/api/materials', { code: 'CAT-B', name: 'MEKP', role: 'catalyst', densityKgPerL: 1 });
  await shop.receive('RB-1', 'RES-B');
  await shop.receive('CB-1', 'CAT-B');
  const layers = [
    { code: 'A', name: 'Skin', materials: [{ material: 'RES-B' }] },
    { code: 'B', name: 'Bulk', materials: [{ material: 'RES-B' }], predecessors: ['A'] },
  ];
  await shop.act('/api/models/TS86/schedules', { partKind: 'hull molding', version: 7, layers });
};

/** The rules that nonconformities about something name. */
export const rulesAbout = async (shop: Shop, about: string): Promise<readonly string[]> => {
  const { items } = await shop.read<NonconformityPage>('/api/nonconformities?limit=500');
  return items.filter((item) => item.about === about).map(({ rule }) => rule);
};
