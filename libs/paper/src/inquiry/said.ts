/** A label with what it says. */
export type Said = readonly [label: string, value: string];
