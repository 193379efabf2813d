import type { NextFunction, Request, RequestHandler, Response } from 'express';
import type { AccessSettings } from '../access/settings.js';
import { isLoopbackAddress } from '../config/loopback.js';
import { refuseEarly } from './refuse-early.js';

/** How a request came here. */
export interface Arrival {
  /** Address of the other end of the connection. */
  readonly peer: string;
  /** Whether that is a proxy that is trusted, and says over what the request came to it. */
  readonly passedOn: boolean;
  /** Whether it came over TLS: to us, or to that proxy. */
  readonly encrypted: boolean;
}

/** Whether nobody on the way could read along: over TLS, or within this machine, as its health is asked. */
export const isPrivate = ({ peer, passedOn, encrypted }: Arrival): boolean =>
  encrypted || (!passedOn && isLoopbackAddress(peer));

/**
 * Refuses what comes in clear, where the service is reached over TLS: past the proxy, or through one that took it in clear.
 * The word of a proxy is taken from those that are trusted alone.
 */
export const encryptedOnly =
  ({ secure, hosts }: AccessSettings): RequestHandler =>
  (request: Request, response: Response, next: NextFunction): void => {
    const peer = request.socket.remoteAddress ?? '';
    const trusts = request.app.get('trust proxy fn') as (address: string, hop: number) => boolean;
    const passedOn = trusts(peer, 0) && request.headers['x-forwarded-proto'] !== undefined;
    if (!secure || isPrivate({ peer, passedOn, encrypted: request.secure })) return next();
    const [host] = hosts;
    refuseEarly(
      response,
      'tls-needed',
      `Use https${host === undefined ? '' : `://${host}`}: nothing is answered in clear.`,
    );
  };
