/** What was done behind the service's back, and where. */
export interface TamperFault {
  readonly what: 'changed' | 'removed' | 'added' | 'reordered';
  readonly table: string;
  /** Id of the row, or what else tells it from others. */
  readonly id: string;
  readonly words: string;
}

export const fault = (what: TamperFault['what'], table: string, id: string, why: string): TamperFault => ({
  ...{ what, table, id },
  words: `${table} ${id} was ${what}: ${why}`,
});
