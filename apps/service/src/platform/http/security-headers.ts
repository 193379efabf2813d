import type { NextFunction, Request, RequestHandler, Response } from 'express';
import type { AccessSettings } from '../access/settings.js';

const HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy':
    "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'camera=(self), geolocation=(), microphone=()',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/** The readable API page styles itself inline. */
const API_PAGE =
  "default-src 'self'; img-src 'self' data:; style-src 'self' 'unsafe-inline'; object-src 'none'; base-uri 'none'; frame-ancestors 'none'";

/**
 * The thread that reads codes from the camera compiles WebAssembly, which browsers forbid without this word. It stands
 * in the policy of this one file, which may do nothing else but fetch what it compiles; no page may compile any.
 */
const CODE_READER = "default-src 'none'; script-src 'wasm-unsafe-eval'; connect-src 'self'";
const IS_CODE_READER = /^\/assets\/code-worker-[\w-]+\.js$/;

/** Tells browsers to run and show only what this service sends. */
export const securityHeaders =
  ({ secure }: AccessSettings): RequestHandler =>
  (request: Request, response: Response, next: NextFunction): void => {
    response.set(HEADERS);
    if (secure) response.set('Strict-Transport-Security', 'max-age=31536000');
    // The router finds an address in any case of letters.
    const path = request.path.toLowerCase();
    if (path.startsWith('/api/docs')) response.set('Content-Security-Policy', API_PAGE);
    if (IS_CODE_READER.test(request.path)) response.set('Content-Security-Policy', CODE_READER);
    if (path.startsWith('/api/')) response.set('Cache-Control', 'no-store');
    next();
  };
