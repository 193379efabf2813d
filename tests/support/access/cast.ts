import { randomUUID } from 'node:crypto';
import { ROLES, type Role } from '@hull-record/contracts';
import { FirstCodes } from '../../../apps/service/src/sign-in/first-codes.js';
import type { RunningService } from '../service.js';
import type { Fields } from '../shop-stock.js';
import { Client, type Reply } from './client.js';

/** A passphrase for tests: everybody has it, and it serves in any browser. */
export const PASSPHRASE = 'four winds over the harbour';
/** A PIN for tests; it serves at an enrolled device and on this machine. */
export const PIN = '739204';

/** Badge of the one person with a role. */
export const BADGES: Readonly<Record<Role, string>> = {
  receiving: 'REC-9',
  laminator: 'LAM-9',
  'shift lead': 'LEAD-9',
  inspector: 'INS-9',
  patcher: 'PAT-9',
  quality: 'QUA-9',
  warranty: 'WAR-9',
  dealer: 'DEA-9',
  auditor: 'AUD-9',
  administrator: 'ADMIN',
};

/**
 * A plant with one person for each role, each signed in with an own passphrase in an own browser, as people do: nobody
 * has two jobs, and ADMIN administers alone.
 */
export class Cast {
  private minutes = 0;

  private constructor(
    readonly service: RunningService,
    private readonly clients: ReadonlyMap<Role, Client>,
  ) {}

  /** Registers and signs in everybody, on a service that was started with the roles `as opened`. */
  static async gather(service: RunningService): Promise<Cast> {
    const clients = new Map<Role, Client>([['administrator', new Client(service.url)]]);
    const cast = new Cast(service, clients);
    const { code } = await service.get(FirstCodes).give('ADMIN');
    expectStatus(200, await cast.as('administrator').firstSignIn('ADMIN', code, PASSPHRASE));
    await cast.recorded('administrator', '/api/dealers', {
      code: 'NLM',
      name: 'Northlight Marine',
      place: 'Calder Bay',
    });
    for (const role of ROLES.filter((each) => each !== 'administrator')) {
      await cast.register(BADGES[role], role, role === 'dealer' ? { dealer: 'NLM' } : {});
      clients.set(role, await cast.arrive(BADGES[role]));
    }
    return cast;
  }

  as(role: Role): Client {
    const client = this.clients.get(role);
    if (!client) throw new Error(`Nobody is there as ${role}.`);
    return client;
  }

  /** Registers somebody more. */
  register(badge: string, role: Role, more: Fields = {}): Promise<Reply> {
    return this.recorded('administrator', '/api/people', { badge, name: `Person ${badge}`, roles: [role], ...more });
  }

  /** Gives somebody a one-time code, as an administrator. */
  async firstCode(badge: string): Promise<string> {
    const reply = await this.as('administrator').post(`/api/people/${badge}/first-codes`);
    expectStatus(200, reply);
    return String(reply.body['code']);
  }

  /** Signs somebody in for the first time, with a one-time code, in a browser of their own. */
  async arrive(badge: string, secret = PASSPHRASE, client = new Client(this.service.url)): Promise<Client> {
    expectStatus(200, await client.firstSignIn(badge, await this.firstCode(badge), secret));
    return client;
  }

  /** A later instant at each call, a minute apart, in the first days of 2026. */
  tick(): string {
    this.minutes += 1;
    return new Date(Date.UTC(2026, 0, 5, 7, this.minutes)).toISOString();
  }

  envelope(role: Role, more: Fields = {}): Fields {
    return { id: randomUUID(), enteredBy: BADGES[role], device: 'DESK', happenedAt: this.tick(), ...more };
  }

  /** Sends a record as the person with a role; gives the answer, whatever it is. */
  send(role: Role, path: string, fields: Fields): Promise<Reply> {
    return this.as(role).post(path, this.envelope(role, fields));
  }

  /** Records something as the person with a role; throws when it is refused. */
  async recorded(role: Role, path: string, fields: Fields): Promise<Reply> {
    const reply = await this.send(role, path, fields);
    if (reply.status !== 201) throw new Error(`${role}, ${path}: ${reply.status} ${JSON.stringify(reply.body)}`);
    return reply;
  }
}

const expectStatus = (status: number, reply: Reply): void => {
  if (reply.status !== status) throw new Error(`${reply.status} ${JSON.stringify(reply.body)}`);
};
