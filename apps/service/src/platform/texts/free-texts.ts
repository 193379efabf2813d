/** A column of a fact in which somebody wrote freely, of a boat that has an owner. */
export interface FreeText {
  readonly table: string;
  readonly field: string;
}

/**
 * The columns whose text lies apart, so that it can be erased. In the fact stands its commitment; in facts that were
 * recorded before, the text itself. What is written where no boat has an owner yet, and the reasons of what quality and
 * the office decide, stay in the journal.
 */
export const FREE_TEXTS: readonly FreeText[] = [
  { table: 'claim', field: 'symptoms' },
  { table: 'claim_decision', field: 'reason' },
  { table: 'claim_mark', field: 'reason' },
  { table: 'defect', field: 'note' },
  { table: 'life_fact', field: 'note' },
  { table: 'repair', field: 'note' },
];

/** What stands in a column in the place of a text that lies apart, before the 64 digits of its commitment. */
export const COMMITMENT = 'commitment:';

/** SQL that is true for a value that is such a commitment. */
export const isCommitment = (value: string): string => `${value} ~ '^${COMMITMENT}[0-9a-f]{64}$'`;
