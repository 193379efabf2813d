import { z } from 'zod';
import { NotJson } from '@hull-record/evidence';
import { StatisticsError } from '@hull-record/statistics';
import { TradeError } from '@hull-record/trade';
import { difference } from './agree.js';
import { Case } from './case.js';
import type { Check } from './check.js';
import { CHECKS } from './checks/index.js';

/** What became of a case. */
export interface Outcome {
  readonly id: string;
  readonly check: string;
  readonly passed: boolean;
  readonly why?: string;
}

/**
 * Runs one case against the library.
 *
 * A refusal of the library is the value `{ error: code }`, which a case can expect. A case with an unknown key, an
 * unknown check or an input that the check does not take fails.
 */
export const runCase = (given: unknown): Outcome => {
  const parsed = Case.safeParse(given);
  if (!parsed.success) return { id: idOf(given), check: '', passed: false, why: z.prettifyError(parsed.error) };
  const { id, check: name, input, expected, rel_tol, abs_tol } = parsed.data;
  const check = Object.hasOwn(CHECKS, name) ? CHECKS[name] : undefined;
  if (!check) return { id, check: name, passed: false, why: `There is no check ${name}; --list names them.` };
  const ran = valueOf(check, input);
  const why = 'refused' in ran ? ran.refused : difference(ran.value, expected, { rel: rel_tol, abs: abs_tol });
  return { id, check: name, passed: why === undefined, ...(why === undefined ? {} : { why }) };
};

const valueOf = (check: Check, input: unknown): { readonly value: unknown } | { readonly refused: string } => {
  try {
    return { value: check.run(input) };
  } catch (error) {
    if (error instanceof TradeError || error instanceof StatisticsError || error instanceof NotJson)
      return { value: { error: error.code } };
    if (error instanceof z.ZodError) return { refused: `input: ${z.prettifyError(error)}` };
    throw error;
  }
};

const idOf = (given: unknown): string =>
  given !== null && typeof given === 'object' && 'id' in given ? String(given.id) : 'a case without an id';
