import { type CanActivate, type ExecutionContext, Injectable } from '@nestjs/common';
import { may, type RouteName, routes, type Scope, WHO_MAY } from '@hull-record/contracts';
import type { Request } from 'express';
import { CsrfMissing, DeviceRevoked, NotAllowed, SignInNeeded } from './access-refusals.js';
import { ADMISSION, Admissions } from './admissions.js';
import { type Caller, callNow, type KnownPerson, type SendingDevice } from './call.js';
import { KeepEntry } from './keep-entry.js';
import { type DeviceHere, QUEUED, ReadCaller } from './read-caller.js';
import { routeOf } from './route-name.js';
import { sameText } from './secrets.js';
import { mayWait } from './who-may-wait.js';

/** Header that a browser sends back with whatever changes something; a page of another site cannot read or set it. */
export const CSRF = 'x-hull-record-csrf';

/**
 * The one place where a call is allowed or refused, by the table in contracts. A route that the table does not have is
 * refused to everybody.
 *
 * @throws SignInNeeded, NotAllowed, CsrfMissing
 */
@Injectable()
export class Authorise implements CanActivate {
  constructor(
    private readonly callers: ReadCaller,
    private readonly keep: KeepEntry,
    private readonly admissions: Admissions,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const route = routeOf(context.getHandler());
    if (route === null) throw new NotAllowed();
    const call = callNow();
    call.route = route;
    if (WHO_MAY[route] === 'anyone') return true;
    const request = context.switchToHttp().getRequest<Request>();
    call.caller =
      request.headers[QUEUED] === undefined ? await this.person(request, route) : await this.device(request, route);
    return true;
  }

  private async person(request: Request, route: RouteName): Promise<Caller> {
    const read = await this.callers.person(request);
    if (!read) throw new SignInNeeded();
    const caller = read.caller as KnownPerson;
    if (read.csrf !== null && request.method !== 'GET') assertOwnPage(request, read.csrf);
    if (!may(caller.roles, route)) throw new NotAllowed();
    if (caller.scopes && !caller.scopes.includes(scopeOf(route)))
      throw new NotAllowed(`The token is not for this: it lacks the scope ${scopeOf(route)}.`);
    return caller;
  }

  /** Who made each entry is seen where it is recorded, since the entry says so. */
  private async device(request: Request, route: RouteName): Promise<Caller> {
    const device = this.admissions.redeem(request.headers[ADMISSION]) ?? (await this.callers.device(request));
    if (!device) throw new SignInNeeded();
    if (!mayWait(route)) throw new NotAllowed('This cannot wait on a device: sign in and send it.');
    if (isRevoked(device)) throw new DeviceRevoked(await this.keep.run(device, request));
    return device;
  }
}

const isRevoked = (device: SendingDevice | DeviceHere): device is DeviceHere => 'revoked' in device && device.revoked;

const assertOwnPage = (request: Request, csrf: string): void => {
  const sent = request.headers[CSRF];
  if (typeof sent !== 'string' || !sameText(sent, csrf)) throw new CsrfMissing();
};

/** What a token has to be for: papers where the answer is one, to ask, or to record. */
const scopeOf = (name: RouteName): Scope => {
  const { method, produces } = routes[name] as { method: string; produces?: string };
  if (produces === 'application/pdf') return 'papers';
  return method === 'GET' || name === 'sharedLots' || name === 'planPatch' ? 'read' : 'record';
};
