import { type ArgumentsHost, Catch, type ExceptionFilter, HttpException, Logger } from '@nestjs/common';
import type { Response } from 'express';
import type { Problem } from '@hull-record/contracts';
import { Refusal } from '../refusals.js';
import { fromDatabase } from './database-refusals.js';
import { fromGenealogy } from './genealogy-refusals.js';

const STATUS = {
  malformed: 400,
  'unknown caller': 401,
  forbidden: 403,
  'not found': 404,
  conflict: 409,
  'too large': 413,
  unsupported: 415,
  unprocessable: 422,
  'too many': 429,
  unavailable: 503,
} as const;

/** Makes every error RFC 9457 problem details: the one place where a refusal meets HTTP. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  private readonly log = new Logger('problem');

  catch(error: unknown, host: ArgumentsHost): void {
    const problem = this.told(error);
    const response = host.switchToHttp().getResponse<Response>();
    if (response.headersSent) {
      response.destroy(error instanceof Error ? error : undefined);
      return;
    }
    // Where a file was to be sent compressed, and kept for good, its refusal is neither.
    response.removeHeader('content-encoding');
    response.setHeader('cache-control', 'no-store');
    response.status(problem.status).type('application/problem+json').send(JSON.stringify(problem));
  }

  /** An error as problem details; one of the service itself is logged. */
  protected told(error: unknown): Problem {
    const problem = toProblem(error);
    if (problem.status >= 500) this.log.error(error instanceof Error ? (error.stack ?? error.message) : String(error));
    return problem;
  }
}

/** An error as problem details; what is not a refusal tells nothing of itself. */
export const toProblem = (error: unknown): Problem => {
  const known = error instanceof Refusal ? error : (fromDatabase(error) ?? fromGenealogy(error));
  if (known) {
    return {
      type: `/problems/${known.code}`,
      title: known.code.replaceAll('-', ' '),
      status: STATUS[known.reason],
      detail: known.message,
      ...(known.errors.length > 0 ? { errors: [...known.errors] } : {}),
      ...known.data,
    };
  }
  if (error instanceof HttpException) return fromHttp(error);
  return {
    type: '/problems/internal',
    title: 'internal error',
    status: 500,
    detail:
      'Something went wrong here; it was logged. Send the same request again, with the same id: it is recorded once at most.',
  };
};

const fromHttp = (error: HttpException): Problem => {
  const status = error.getStatus();
  const code = (
    { 400: 'invalid-request', 404: 'not-found', 413: 'too-large', 415: 'unsupported-media-type' } as Record<
      number,
      string
    >
  )[status];
  return {
    type: code ? `/problems/${code}` : 'about:blank',
    title: (code ?? error.message).replaceAll('-', ' '),
    status,
    detail: error.message,
  };
};
