import { AsyncLocalStorage } from 'node:async_hooks';
import type { Role, RouteName, Scope } from '@hull-record/contracts';
import type { Request, Response } from 'express';

/** Somebody who was seen to be who they say: by a session, or by the token of a program. */
export interface KnownPerson {
  readonly via: 'session' | 'token';
  readonly plantId: string;
  readonly personId: string;
  readonly badge: string;
  readonly roles: readonly Role[];
  readonly dealerId: string | null;
  readonly deviceId: string;
  readonly device: string;
  /** What a token may be used for; all, of a session. */
  readonly scopes: readonly Scope[] | null;
}

/** A device that sends what waited on it, under its own credential: each entry names who had taken it over. */
export interface SendingDevice {
  readonly via: 'device';
  readonly plantId: string;
  readonly deviceId: string;
  readonly device: string;
}

/** The service itself: it opens the plant, loads the demo, and works for nobody else. */
export interface ServiceItself {
  readonly via: 'service';
}

export type Caller = KnownPerson | SendingDevice | ServiceItself;

/** One call of the service: who calls, and what. */
export interface Call {
  caller: Caller | null;
  route: RouteName | null;
  readonly http?: { readonly request: Request; readonly response: Response };
}

const calls = new AsyncLocalStorage<Call>();

/** Runs something as part of a call. */
export const within = <T>(call: Call, run: () => T): T => calls.run(call, run);

/** Runs something as the service itself. Nothing that a request asks for may run so. */
export const asService = <T>(run: () => T): T => within({ caller: { via: 'service' }, route: null }, run);

/** The call that is being answered. */
export const callNow = (): Call => {
  const call = calls.getStore();
  if (!call) throw new Error('Nobody calls: what the service does for itself runs within asService.');
  return call;
};

/** The person who calls; to be asked only where the table of who may do what says that one does. */
export const personNow = (): KnownPerson => {
  const { caller } = callNow();
  if (caller?.via !== 'session' && caller?.via !== 'token') throw new Error('No person calls.');
  return caller;
};
