/** An invented id; each request has one of its own, made by whoever sends it. */
export const EXAMPLE_ID = '5f0c1f5e-6f0e-4f43-9b1d-2f8f1f0b7a11';

/** What one of those who register things carries: here the first administrator at the first desk. */
export const atTheDesk = (what: object): object => told({ enteredBy: 'ADMIN', device: 'DESK', ...what });

/** What every record carries, and what is told. */
export const told = (what: object): object => ({
  ...{ id: EXAMPLE_ID, enteredBy: 'LAM-07', device: 'TAB-3', happenedAt: '2026-05-14T09:20:00-04:00' },
  ...what,
});

/** An amount taken of a lot, or of what was in a tank. */
export const taken = (from: { lot: string } | { tank: string }, quantity: string, unit: string): object => ({
  ...from,
  amount: { quantity, unit, basis: 'weighed' },
});
