import type { UseQueryResult } from '@tanstack/react-query';

type DataOf<Results extends readonly UseQueryResult[]> = {
  [I in keyof Results]: Results[I] extends UseQueryResult<infer T> ? T : never;
};

/** Several questions as one: answered when all are; what went wrong is what went wrong with the first of them. */
export const together = <const Results extends readonly UseQueryResult[]>(results: Results) => {
  const whole = results.every(({ data }) => data !== undefined);
  return {
    data: whole ? (results.map(({ data }) => data) as DataOf<Results>) : undefined,
    error: results.find(({ error }) => error !== null)?.error ?? null,
    isFetching: results.some(({ isFetching }) => isFetching),
    dataUpdatedAt: Math.min(...results.map(({ dataUpdatedAt }) => dataUpdatedAt)),
    refetch: () => Promise.all(results.map(({ refetch }) => refetch())),
  };
};
