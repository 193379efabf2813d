import type { Problem } from '@hull-record/contracts';

/** The service answered, but with a refusal. `problem` is what it said, when it said it as problem details (RFC 9457). */
export class Refused extends Error {
  constructor(
    readonly status: number,
    readonly problem: Problem | undefined,
  ) {
    super(problem?.detail ?? '');
  }
}

/** Nothing answered: the service is stopped, or this device does not reach it. */
export class Unreachable extends Error {}

/** What the service found wrong with one field: where, as a JSON pointer (RFC 6901), and what. */
export type FieldError = NonNullable<Problem['errors']>[number];

/** The fields that the service refused, if that is what went wrong. */
export const fieldErrors = (error: unknown): readonly FieldError[] =>
  error instanceof Refused ? (error.problem?.errors ?? []) : [];

/** The problem details in an answer, when it is of that form; anything else says nothing of use. */
export const asProblem = (answer: unknown): Problem | undefined =>
  typeof answer === 'object' && answer !== null && 'detail' in answer && typeof answer.detail === 'string'
    ? (answer as Problem)
    : undefined;
