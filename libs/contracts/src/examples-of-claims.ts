import { told } from './example-parts.js';

const FILED = {
  ...{ kind: 'blister', reference: 'NLM-0117', reportedOn: '2026-05-14', noticedOn: '2026-05-10' },
  ...{ symptoms: 'Blisters on the bottom, both sides, seen at haul-out.', grade: '6M', looks: 'irregular' },
  spots: [
    {
      place: { surface: 'shell', side: 'port', fromTransomMm: 4_200, girthMm: 520 },
      ...{ lengthMm: 8, widthMm: 7, counted: 22, countedAreaM2: 0.5 },
    },
  ],
  ...{ hoursAshore: 72 },
  moisture: {
    ...{
      meter: 'Meter of the yard, serial as on its label',
      scale: 'relative scale 0 to 100',
      coating: 'removed at the spots',
    },
    readings: [{ value: 22 }, { value: 27 }],
  },
};

const REPAIRED = {
  spots: [
    {
      ...{ kind: 'gouge', place: { surface: 'shell', side: 'port', fromTransomMm: 5_100, girthMm: 640 } },
      ...{ lengthMm: 180, widthMm: 40, depthMm: 3 },
    },
  ],
  ...{ procedure: 'Ground out to sound laminate, laid up again, faired, gel coat sprayed.', taperRatio: 12 },
  grindOutMm: { lengthMm: 320, widthMm: 180, depthMm: 3 },
  plies: ['mat 450', 'mat 450', 'mat 450'],
  outside: {
    ...{ at: 'Yard of the dealer, North Landing', toldBy: 'the yard’s own work sheet', doneOn: '2026-05-12' },
    ...{ material: 'vinyl ester repair resin of the yard, mat of the yard', evidence: 'work sheet 118, photos' },
  },
  note: 'Struck a piling.',
};

/** One request for each route about claims and warranty, and about repairs that dealers report. All of it is invented. */
export const EXAMPLES_OF_CLAIMS = {
  setWarrantyTerms: told({
    ...{
      enteredBy: 'WAR-01',
      fromModelYear: 2026,
      toModelYear: 2027,
      starts: ['warranty registered', 'sold to first purchaser'],
    },
    covers: [
      { kinds: ['blister'], years: 5, bearsPercent: [100, 100, 75, 50, 25] },
      { kinds: [], years: 1 },
    ],
    transfer: { carries: true, untilYears: 3 },
    ...{ exclusions: ['Damage by grounding'], reason: 'Terms of the season.' },
  }),
  fileClaim: told({ enteredBy: 'WAR-01', dealer: 'NLM', foundBy: 'owner or dealer', ...FILED }),
  fileOwnClaim: told({ enteredBy: 'DEA-01', ...FILED }),
  addClaimPhoto: told({ enteredBy: 'WAR-01', shows: 'close-up with ruler' }),
  addOwnClaimPhoto: told({ enteredBy: 'DEA-01', shows: 'HIN plate' }),
  reportOwnRepair: told({ enteredBy: 'DEA-01', ...REPAIRED }),
  addOwnRepairPhoto: told({ enteredBy: 'DEA-01', shows: 'finished' }),
  decideClaim: told({
    ...{
      enteredBy: 'WAR-01',
      decision: 'part paid',
      paidPercent: 75,
      hours: 36,
      cost: { amount: '4120.00', currency: 'USD' },
    },
    reason: 'Third year of the terms.',
  }),
  markClaim: told({ enteredBy: 'WAR-01', foundBy: 'after a notice', reason: 'The letter had arrived a week before.' }),
};
