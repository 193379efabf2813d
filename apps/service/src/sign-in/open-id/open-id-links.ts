import { Injectable } from '@nestjs/common';
import type { OpenIdLinkView, Role } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { rolesAt } from '../../platform/access/roles.sql.js';
import { standing } from '../../platform/facts/standing.js';
import { Conflict, NotThere } from '../../platform/refusals.js';
import { findByBadge } from '../find-person.js';
import { Sessions } from '../sessions.js';
import { Provider } from './provider.js';

/** Somebody to whom an account of the office is linked, with the roles of now. */
export interface LinkedPerson {
  readonly personId: string;
  readonly badge: string;
  readonly roles: readonly Role[];
}

const PERSON = `
  select p.root as "personId", p.badge, ${rolesAt('p.root', 'now()')} as roles
  from work.open_id_link l join fact.person p on p.root = l.person_id and ${standing('p')}
  where l.issuer = $1 and l.subject = $2`;

/** An issuer as links name it: with or without the last slash it is the same. */
const inFull = (issuer: string): string => new URL(issuer).href;

/** Links an administrator makes between accounts of the office and badges. No claim of the provider makes one. */
@Injectable()
export class OpenIdLinks {
  constructor(
    private readonly db: DataSource,
    private readonly provider: Provider,
    private readonly sessions: Sessions,
  ) {}

  async personOf(issuer: string, subject: string): Promise<LinkedPerson | null> {
    const [person] = await this.db.query<LinkedPerson[]>(PERSON, [inFull(issuer), subject]);
    return person ?? null;
  }

  /** @throws NotThere */
  async list(badge: string): Promise<OpenIdLinkView[]> {
    return this.db.query<OpenIdLinkView[]>(
      'select issuer, subject from work.open_id_link where person_id = $1 order by issuer, subject',
      [await this.find(badge)],
    );
  }

  /** Links an account to a badge; linked to it already, it stays so. @throws OpenIdOff, NotThere, Conflict */
  async link(badge: string, subject: string): Promise<{ done: true }> {
    const issuer = inFull(this.provider.set.issuer);
    const personId = await this.find(badge);
    await this.db.query(
      'insert into work.open_id_link (issuer, subject, person_id) values ($1, $2, $3) on conflict do nothing',
      [issuer, subject, personId],
    );
    const linked = await this.personOf(issuer, subject);
    if (linked?.personId !== personId)
      throw new Conflict(
        'open-id-linked-to-another',
        `This account is linked to ${linked ? `badge ${linked.badge}` : 'somebody else'}: end that link first.`,
        '/subject',
      );
    return { done: true };
  }

  /** Ends a link, and every session of the person: one of them may have been begun by it. @throws OpenIdOff, NotThere */
  async unlink(badge: string, subject: string): Promise<{ done: true }> {
    const personId = await this.find(badge);
    const [, ended] = await this.db.query<[unknown[], number]>(
      'delete from work.open_id_link where issuer = $1 and subject = $2 and person_id = $3',
      [inFull(this.provider.set.issuer), subject, personId],
    );
    if (ended === 0) throw new NotThere('link', subject, '/subject');
    await this.sessions.endAllOf(personId);
    return { done: true };
  }

  private async find(badge: string): Promise<string> {
    const person = await findByBadge(this.db.manager, badge);
    if (!person) throw new NotThere('person', badge);
    return person.personId;
  }
}
