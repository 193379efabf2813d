import type { Fact } from '../facts/fact.js';
import { Conflict } from '../refusals.js';
import type { FreeText } from './free-texts.js';
import { keepText } from './keep-text.js';

/**
 * Keeps the text of a new version of a fact; undefined leaves the old one.
 *
 * @throws Conflict `redacted` when the text was redacted: its wording is shown, whatever a version says
 */
export const keepNewText = async (
  fact: Fact,
  { table, field }: FreeText,
  oldId: string,
  value: string | undefined,
): Promise<string | undefined> => {
  if (value === undefined) return undefined;
  const redacted = await fact.tx.query<unknown[]>(
    `select from fact.text_redacted r join fact.${table} x on x.root = r.of_root where x.id = $1 and r.field = $2 limit 1`,
    [oldId, field],
  );
  if (redacted.length > 0)
    throw new Conflict('redacted', 'This text was redacted: give it another wording where it was redacted.', '/set');
  return keepText(fact, value);
};
