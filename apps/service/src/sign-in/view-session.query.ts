import { Injectable } from '@nestjs/common';
import type { SessionView } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { callNow, type KnownPerson } from '../platform/access/call.js';
import { type Read, ReadCaller } from '../platform/access/read-caller.js';
import { now } from '../platform/clock.js';
import { AccessSettings } from '../platform/access/settings.js';
import { FindHere } from './here.js';

/** Tells a browser who is signed in there, and what it needs to change anything. */
@Injectable()
export class ViewSession {
  constructor(
    private readonly db: DataSource,
    private readonly callers: ReadCaller,
    private readonly here: FindHere,
    private readonly settings: AccessSettings,
  ) {}

  async run(): Promise<SessionView> {
    const { http } = callNow();
    return this.of(http ? await this.callers.person(http.request) : null);
  }

  /** The view after a session began or ended, when the cookie of the request no longer says who is there. */
  async after(secret: string | null): Promise<SessionView> {
    return this.of(secret === null ? null : await this.callers.session(secret));
  }

  private async of(read: Read | null): Promise<SessionView> {
    const call = callNow();
    const person = read ? (read.caller as KnownPerson) : null;
    const here = await this.here.of(call);
    return {
      person: person && { badge: person.badge, roles: [...person.roles], dealer: await this.dealerOf(person) },
      device: person?.device ?? (here.enrolled ? here.device : null),
      enrolled: here.enrolled,
      csrf: read?.csrf ?? null,
      until: read?.until?.toISOString() ?? null,
      ...this.always(),
    };
  }

  private always(): Pick<SessionView, 'plant' | 'openId' | 'demo' | 'at'> {
    const { plant, openId, demo } = this.settings;
    return { plant: { ...plant }, openId: openId?.name ?? null, demo, at: now().toISOString() };
  }

  private async dealerOf({ dealerId }: KnownPerson): Promise<string | null> {
    if (dealerId === null) return null;
    const [row] = await this.db.query<{ code: string }[]>('select code from fact.dealer where id = $1', [dealerId]);
    return row?.code ?? null;
  }
}
