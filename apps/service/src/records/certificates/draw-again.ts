import type { CertificateContent } from '@hull-record/contracts';
import type { EntityManager } from 'typeorm';
import { standing } from '../../platform/facts/standing.js';
import { NOW } from '../../platform/views/making.js';
import { loadHull } from '../load-hull.js';
import { loadRecordFacts } from '../record-facts.js';
import { roomOf } from './printed-values.js';
import { wordCertificate } from './word-certificate.js';

/** Layers that find room on any certificate. */
const MOST = 40;

const RELEASED = `
  select f.happened_at as at from fact.life_fact f
  where f.hull_id = $1 and f.what = 'released' and ${standing('f', '$2')} limit 1`;

/**
 * What a certificate would print of its hull as it was on record at an instant, in the place that it had.
 *
 * @returns null when the hull is not released, or not recorded, any more
 */
export const drawAgain = async (
  tx: EntityManager,
  hullId: string,
  issued: CertificateContent,
  asOf = NOW,
): Promise<CertificateContent | null> => {
  const hull = await loadHull(tx, hullId, asOf);
  const [released] = await tx.query<{ at: Date }[]>(RELEASED, [hullId, asOf]);
  if (!hull || !released) return null;
  const { number, issue, signedBy } = issued;
  const of = { number, issue, signedBy, issuedAt: new Date(0), releasedAt: released.at, room: roomOf(issued, MOST) };
  return wordCertificate(await loadRecordFacts(tx, hull, asOf), of);
};
