import type { Request } from 'express';
import { routes } from '@hull-record/contracts';
import type { AccessSettings } from '../../platform/access/settings.js';

/**
 * Where the provider sends the browser back to: the address under which the service is known, or, at this machine
 * alone, the one that the browser uses; that is one of this machine's own (see knownHostsOnly).
 */
export const returnAddress = (request: Request, { openId, secure }: AccessSettings): URL => {
  const own = `${secure ? 'https' : 'http'}://${request.headers.host ?? ''}`;
  return new URL(routes.finishOpenId.path, openId?.publicUrl ?? own);
};

/** The same with what came back, whatever form of address the request had. */
export const returnedAddress = (request: Request, settings: AccessSettings): URL => {
  const address = returnAddress(request, settings);
  address.search = new URL(request.originalUrl, address).search;
  return address;
};
