import type { NextFunction, Request, RequestHandler, Response } from 'express';
import { isLoopbackHost } from '../config/loopback.js';
import type { AccessSettings } from '../access/settings.js';
import { refuseEarly } from './refuse-early.js';

const isLocal = (host: string): boolean => {
  try {
    const { hostname } = new URL(`http://${host}`);
    return isLoopbackHost(hostname);
  } catch {
    return false;
  }
};

const hostOf = (origin: string): string | null => {
  try {
    return new URL(origin).host;
  } catch {
    return null;
  }
};

/**
 * Answers this machine, and the hosts under which the service is known, alone: a name that only points here (DNS
 * rebinding) and a page of another origin are refused.
 */
export const knownHostsOnly =
  ({ hosts }: AccessSettings): RequestHandler =>
  (request: Request, response: Response, next: NextFunction): void => {
    const host = (request.headers.host ?? '').toLowerCase();
    const { origin } = request.headers;
    if (!isLocal(host) && !hosts.includes(host)) {
      const known = hosts.length > 0 ? `https://${hosts.join(', https://')}` : 'http://127.0.0.1 or http://localhost';
      return refuseEarly(response, 'host-not-known', `Use ${known}.`);
    }
    if (origin !== undefined && hostOf(origin) !== host) {
      return refuseEarly(response, 'origin-not-known', 'Requests from pages of another origin are refused.');
    }
    next();
  };
