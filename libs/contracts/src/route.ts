import type { z } from 'zod';

/** One call of the HTTP API. Service, web app and OpenAPI document are made from this table. */
export interface Route {
  readonly method: 'GET' | 'POST';
  /** Path with `:name` for each parameter. */
  readonly path: string;
  readonly tag: string;
  readonly summary: string;
  readonly body?: z.ZodType;
  readonly query?: z.ZodType;
  readonly response?: z.ZodType;
  /** Media type when the answer is not JSON. */
  readonly produces?: string;
  /** Whether the answer sends the browser elsewhere (302). */
  readonly redirects?: true;
}

/** A route that asks. */
export const get = <const R extends Omit<Route, 'method'>>(route: R) => ({ method: 'GET', ...route }) as const;
/** A route that records, or that asks more than an address can hold. */
export const post = <const R extends Omit<Route, 'method'>>(route: R) => ({ method: 'POST', ...route }) as const;
