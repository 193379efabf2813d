import { told } from './example-parts.js';

/** One request for each route about owners, fitted items and joints. All of it is invented. */
export const EXAMPLES_OF_OWNERS = {
  registerOwner: told({
    what: 'first purchaser',
    owner: { name: 'A. Example', address: '1 Quay Street, Calder Bay', email: 'owner@example.org' },
  }),
  eraseOwner: told({ reason: 'Asked for by letter.' }),
  acknowledge: told({ about: '00000000-0000-4000-8000-000000000036' }),
  recordOwnerRequest: told({ asked: 'access', askedOn: '2026-03-02' }),
  correctOwner: told({
    owner: { name: 'A. Example', address: '4 Sound Lane, Calder Bay' },
    reason: 'Moved, by letter.',
  }),
  placeLegalHold: told({ reason: 'Proceedings, file as kept by counsel.' }),
  endLegalHold: told({ reason: 'Closed, by letter of counsel.' }),
  redactText: told({
    ...{ kind: 'claim', of: '00000000-0000-4000-8000-000000000040', wording: 'Blisters below the waterline.' },
    reason: 'Named the owner; asked for by letter.',
  }),
  redactPhoto: told({
    areas: [{ x: 0.1, y: 0.05, width: 0.2, height: 0.3 }],
    reason: 'Shows a face; asked for by letter.',
  }),
  fitItem: told({ what: 'engine', serial: 'E-2231-07', customerSupplied: true }),
  removeItem: told({ reason: 'Replaced under warranty.' }),
  correctHin: told({
    ...{ enteredBy: 'QUA-01', hin: 'TRZ01431E626', reason: 'The serial was struck twice.' },
    authority: 'Letter of the authority, number and date as filed.',
  }),
  readJoint: told({
    ...{ what: 'bond gap', unit: 'mm', limits: { max: 4, unit: 'mm' }, source: 'Assembly procedure AP-2' },
    spots: [{ value: '3.2' }, { value: '3.8' }],
  }),
};
