import { z } from 'zod';
import { Instant, page } from '../envelope.js';
import { OwnCertificate } from '../certificates.js';
import { LIFE_FACTS } from '../hulls.js';

/** What a dealer sees of an own hull: no crew, no lots, no nonconformities; the dealer's cut of the build record has more. */
export const OwnHull = z
  .object({
    number: z.string(),
    hin: z.string().nullable(),
    model: z.string(),
    life: z.array(z.object({ what: z.enum(LIFE_FACTS), at: Instant })).describe('since it was released, oldest first'),
    certificate: OwnCertificate,
    buildRecord: z.string().describe('path of its build record as PDF, in the cut for dealers'),
  })
  .meta({ id: 'OwnHull' });
export type OwnHull = z.output<typeof OwnHull>;

export const OwnHullPage = page('OwnHullPage', OwnHull);
export type OwnHullPage = z.output<typeof OwnHullPage>;
