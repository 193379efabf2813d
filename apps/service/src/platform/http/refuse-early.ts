import type { Response } from 'express';

/** Refuses a request before the framework sees it, as problem details (RFC 9457). */
export const refuseEarly = (response: Response, code: string, detail: string): void => {
  const problem = { type: `/problems/${code}`, title: code.replaceAll('-', ' '), status: 403, detail };
  response.status(403).type('application/problem+json').send(JSON.stringify(problem));
};
