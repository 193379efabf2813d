import { type ArgumentMetadata, StandardSchemaValidationPipe } from '@nestjs/common';
import { InvalidRequest } from '../refusals.js';
import { unknownFields } from './unknown-fields.js';

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

/** So many fields are named: a body may have a hundred thousand that nobody knows, and the answer would be many times as long. */
const NAMED = 20;

/**
 * What a schema made of a request, as long as it read all of it.
 *
 * @throws InvalidRequest naming the fields that it does not know, the first twenty
 */
export const wholly = <T>(given: unknown, read: T): T => {
  const unknown = unknownFields(given, read);
  if (unknown.length > 0) throw refusalOf(unknown.slice(0, NAMED));
  return read;
};

/** Refuses what a schema would leave unread. */
class WholeRequestPipe extends StandardSchemaValidationPipe {
  override async transform<T>(value: T, metadata: ArgumentMetadata): Promise<T> {
    return wholly(value, await super.transform(value, metadata));
  }
}

/** Checks every body and query against its schema in contracts. */
export const validation = (): StandardSchemaValidationPipe => new WholeRequestPipe({ exceptionFactory: refusalOf });
