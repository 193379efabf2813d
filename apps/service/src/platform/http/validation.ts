import { StandardSchemaValidationPipe } from '@nestjs/common';
import { InvalidRequest } from '../refusals.js';

interface Issue {
  readonly message: string;
  readonly path?: readonly (PropertyKey | { readonly key: PropertyKey })[] | undefined;
}

/** JSON pointer (RFC 6901) of a schema issue. */
export const pointerOf = (issue: Issue): string =>
  (issue.path ?? [])
    .map((step) => String(typeof step === 'object' ? step.key : step))
    .map((step) => `/${step.replaceAll('~', '~0').replaceAll('/', '~1')}`)
    .join('');

/** Issues of a schema as the refusal that names each wrong field. */
export const refusalOf = (issues: readonly Issue[]): InvalidRequest =>
  new InvalidRequest(issues.map((issue) => ({ pointer: pointerOf(issue), detail: issue.message })));

/** Checks every body and query against its schema in contracts. */
export const validation = (): StandardSchemaValidationPipe =>
  new StandardSchemaValidationPipe({ exceptionFactory: refusalOf });
