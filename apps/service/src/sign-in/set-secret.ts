import type { EntityManager } from 'typeorm';
import { kindOf } from './secret-rules.js';
import { verifierOf } from './verifier.js';

/** Sets the PIN or the passphrase of a person. The one of the other kind stays, but for that of the demo. */
export const setSecret = async (tx: EntityManager, personId: string, secret: string): Promise<void> => {
  const verifier = await verifierOf(secret);
  await tx.query('delete from work.credential where person_id = $1 and demo', [personId]);
  await tx.query(
    `insert into work.credential (person_id, kind, verifier, demo, set_at) values ($1, $2, $3, false, now())
     on conflict (person_id, kind) do update set verifier = excluded.verifier, set_at = excluded.set_at`,
    [personId, kindOf(secret), verifier],
  );
};
