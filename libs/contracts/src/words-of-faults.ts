import { z } from 'zod';

const PLAIN: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  record: 'an object',
};

const FORMATS: Readonly<Record<string, string>> = {
  date: 'must be a day, such as 2026-03-01',
  datetime: 'must be an instant with its zone, such as 2026-03-01T12:00:00Z',
  uuid: 'must be a UUID',
  email: 'must be an address of e-mail',
};

interface Fault {
  readonly code?: string | undefined;
  readonly input?: unknown;
  readonly origin?: string;
  readonly minimum?: number | bigint;
  readonly maximum?: number | bigint;
  readonly inclusive?: boolean;
  readonly expected?: string;
  readonly format?: string;
  readonly values?: readonly unknown[];
}

const many = (n: number | bigint | undefined, one: string): string =>
  `${String(n)} ${one}${Number(n) === 1 ? '' : 's'}`;

const tooSmall = ({ origin, minimum, inclusive }: Fault): string => {
  if (origin === 'string') return `must have at least ${many(minimum, 'character')}`;
  if (origin === 'array' || origin === 'set') return `must have at least ${many(minimum, 'item')}`;
  return `must be ${inclusive === false ? 'more than' : 'at least'} ${String(minimum)}`;
};

const tooBig = ({ origin, maximum, inclusive }: Fault): string => {
  if (origin === 'string') return `must have at most ${many(maximum, 'character')}`;
  if (origin === 'array' || origin === 'set') return `must have at most ${many(maximum, 'item')}`;
  return `must be ${inclusive === false ? 'less than' : 'at most'} ${String(maximum)}`;
};

/**
 * What is wrong with a value, in the words of a person at a form, to stand after the name of its field; undefined where the
 * library's own words do.
 */
export const wordFault = (fault: Fault): string | undefined => {
  const { code, input } = fault;
  if (input === undefined || input === null) return 'is missing: say it';
  if (input === '' && code !== 'custom') return 'is empty: say it';
  if (code === 'too_small') return tooSmall(fault);
  if (code === 'too_big') return tooBig(fault);
  if (code === 'invalid_type') return `must be ${PLAIN[fault.expected ?? ''] ?? fault.expected ?? 'something else'}`;
  if (code === 'invalid_value')
    return `must be ${(fault.values ?? []).length === 1 ? '' : 'one of: '}${(fault.values ?? []).join(', ')}`;
  return code === 'invalid_format' ? FORMATS[fault.format ?? ''] : undefined;
};

z.config({ customError: (fault) => wordFault(fault as Fault) });
