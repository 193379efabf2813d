import { kg, type Fields, type Shop } from './shop.js';

const csm = { arealMass: { value: 450, unit: 'g/m2' }, fibreMassFraction: 0.3 };

/** A hull of a gel coat and two layers of glass over 10 m2 with all that is needed to judge what was used in it. */
export const openAmountsShop = async (shop: Shop): Promise<void> => {
  const film = { what: 'wet film', spots: 1, limits: { min: 400, max: 600, unit: 'um' }, source: 'invented for tests' };
  const thick = { what: 'thickness', spots: 1, limits: { min: 0.5, unit: 'mm' }, source: 'invented for tests' };
  const layers = [
    {
      code: 'G',
      name: 'Gel coat',
      materials: [{ material: 'GEL-W' }],
      readings: [film],
      areaM2: 10,
      lossAllowance: 0.2,
    },
    {
      ...{ code: 'A', name: 'Skin', predecessors: ['G'], materials: [{ material: 'MAT-450' }, { material: 'RES-VE' }] },
      ...{ areaM2: 10, laminate: { plies: [csm] }, readings: [thick] },
    },
    {
      ...{ code: 'B', name: 'Bulk', predecessors: ['A'], materials: [{ material: 'MAT-450' }, { material: 'RES-VE' }] },
      ...{ areaM2: 10, laminate: { plies: [csm, csm], tolerance: 0.15 }, readings: [thick] },
    },
  ];
  await shop.act('/api/models/TS86/schedules', { partKind: 'hull molding', version: 8, layers });
  await shop.receive('AG-1', 'GEL-W');
  await shop.receive('AM-1', 'MAT-450');
  await shop.receive('AR-1', 'RES-VE');
};

/** So many kilograms of a lot. */
export const of = (lot: string, amount: number): Fields => ({ lot, amount: kg(amount) });
