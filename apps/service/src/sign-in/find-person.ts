import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import type { SecretKind } from './secret-rules.js';

/** A person of the plant, by badge in any case of letters. */
export const findByBadge = async (
  tx: EntityManager,
  badge: string,
): Promise<{ personId: string; badge: string } | undefined> => {
  const [found] = await tx.query<{ personId: string; badge: string }[]>(
    `select p.root as "personId", p.badge from fact.person p where lower(p.badge) = lower($1) and ${standing('p')}`,
    [badge],
  );
  return found;
};

/** The verifier of a person's secret of a kind. That of a demo person is none while the demo is off. */
export const verifierFor = async (
  tx: EntityManager,
  badge: string,
  kind: SecretKind,
  demo: boolean,
): Promise<{ personId: string; verifier: string } | undefined> => {
  const [found] = await tx.query<{ personId: string; verifier: string }[]>(
    `select p.root as "personId", c.verifier from fact.person p join work.credential c on c.person_id = p.root
     where lower(p.badge) = lower($1) and c.kind = $2 and (not c.demo or $3) and ${standing('p')}`,
    [badge, kind, demo],
  );
  return found;
};
