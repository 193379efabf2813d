import type { INestApplication } from '@nestjs/common';
import { FIRST_BADGE } from './platform/people/first.js';
import { DEMO_PIN, DemoPins } from './sign-in/demo-pins.js';
import { FirstAdministrator } from './sign-in/first-administrator.js';

/** Sees that somebody can sign in, and says how. */
export const prepareSignIn = async (app: INestApplication, demo: boolean): Promise<readonly string[]> => {
  const pins = app.get(DemoPins);
  if (demo) await pins.give([FIRST_BADGE]);
  else await pins.takeAway();
  const first = await app.get(FirstAdministrator).code(demo);
  if (first)
    return [
      `First sign-in: badge ${first.badge} with the one-time code ${first.code}, and a passphrase of your choice.`,
    ];
  if (!demo) return [];
  return [
    `Demo only: sign in as QUA-01, LAM-01, INS-01, PAT-01, REC-01, LEAD-1, WAR-01, AUD-01, DLR-NLM or ${FIRST_BADGE}, all with PIN ${DEMO_PIN}.`,
  ];
};
