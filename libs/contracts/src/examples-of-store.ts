import { told } from './example-parts.js';

/** One request for each route of the store. */
export const EXAMPLES_OF_STORE = {
  labelContainers: told({
    containers: [
      { label: 'D-118-1', kind: 'drum', amount: { quantity: '200', unit: 'kg', basis: 'weighed' }, place: 'Bay 2' },
    ],
  }),
  tellContainer: told({ what: 'rejected', note: 'Water in the drum: the bung was left open in the rain.' }),
  placeHold: told({ enteredBy: 'QUA-01', kind: 'quality', reason: 'Gel time out of the certificate.' }),
  liftHold: told({ enteredBy: 'QUA-01', reason: 'Retested: gel time as certified.' }),
  bookLoss: told({
    what: 'purged',
    reason: 'Gelled in the pump.',
    amount: { quantity: '4', unit: 'kg', basis: 'weighed' },
  }),
  countLot: told({ quantity: '182.5', unit: 'kg', note: 'Quarterly count' }),
  retestLot: told({
    enteredBy: 'QUA-01',
    expiresOn: '2026-09-30',
    result: 'Viscosity and gel time within the data sheet.',
  }),
};
