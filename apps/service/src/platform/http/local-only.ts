import type { NextFunction, Request, Response } from 'express';
import { LOOPBACK } from '../config/config.js';

const isLocal = (host: string): boolean => {
  try {
    const { hostname } = new URL(`http://${host}`);
    return (LOOPBACK as readonly string[]).includes(hostname.replace(/^\[|\]$/g, ''));
  } catch {
    return false;
  }
};

const originIsLocal = (origin: string, host: string): boolean => {
  try {
    return new URL(origin).host === host;
  } catch {
    return false;
  }
};

const refuse = (response: Response, code: string, detail: string): void => {
  response
    .status(403)
    .type('application/problem+json')
    .send(JSON.stringify({ type: `/problems/${code}`, title: code.replaceAll('-', ' '), status: 403, detail }));
};

/**
 * Until people sign in, only this machine is answered: a name that points here (DNS rebinding) and a page of another
 * origin are refused.
 */
export const localOnly = (request: Request, response: Response, next: NextFunction): void => {
  const host = request.headers.host ?? '';
  const { origin } = request.headers;
  if (!isLocal(host)) return refuse(response, 'host-not-local', 'Use http://127.0.0.1 or http://localhost.');
  if (origin !== undefined && !originIsLocal(origin, host)) {
    return refuse(response, 'origin-not-local', 'Requests from pages of another origin are refused.');
  }
  next();
};
