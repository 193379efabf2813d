import { EXAMPLE_ID, told } from './example-parts.js';

/** One request for each route about guns and checks of equipment. */
export const EXAMPLES_OF_GUNS = {
  hookUpGun: told({ feed: 'resin', tank: 'T1' }),
  setGun: told({ catalystPercent: 1.8 }),
  apportionDrop: told({
    from: { gun: 'G-2' },
    amount: { quantity: '96.5', unit: 'kg' },
    over: [{ layer: EXAMPLE_ID, weight: 31.5 }],
  }),
  checkEquipment: told({
    ...{ what: 'timed catch', caught: { seconds: 30, resinG: 1_020, catalystG: 18.4, glassG: 505 } },
    limits: { min: 1.2, max: 2.5, unit: '%' },
  }),
  emptyTank: told({ cleaned: true }),
};
