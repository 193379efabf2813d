import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';
import type { QueryOf } from './contract.js';

const pages = { initialPageParam: '', getNextPageParam: ({ next }: { next: string | null }) => next };

export const holdsQuery = (query: QueryOf<'/api/holds'>) =>
  infiniteQueryOptions({
    queryKey: ['holds', query],
    queryFn: ({ pageParam, signal }) => ask('/api/holds', {}, { query: { ...query, cursor: pageParam }, signal }),
    ...pages,
  });

export const holdQuery = (hold: string) =>
  queryOptions({
    queryKey: ['hold', hold],
    queryFn: ({ signal }) => ask('/api/holds/:hold', { hold }, { signal }),
    refetchInterval: ({ state }) => (state.data?.recomputing ? 5_000 : false),
  });

export const heldHullsQuery = (hold: string, query: QueryOf<'/api/holds/:hold/hulls'>) =>
  infiniteQueryOptions({
    queryKey: ['held hulls', hold, query],
    queryFn: ({ pageParam, signal }) =>
      ask('/api/holds/:hold/hulls', { hold }, { query: { ...query, cursor: pageParam }, signal }),
    ...pages,
  });

export const dutyQuery = (hold: string) =>
  queryOptions({
    queryKey: ['duty', hold],
    queryFn: ({ signal }) => ask('/api/holds/:hold/duty', { hold }, { signal }),
  });

export const noticeQuery = (notice: string) =>
  queryOptions({
    queryKey: ['notice', notice],
    queryFn: ({ signal }) => ask('/api/notices/:notice', { notice }, { signal }),
  });

export const recipientsQuery = (notice: string) =>
  queryOptions({
    queryKey: ['recipients', notice],
    queryFn: ({ signal }) => ask('/api/notices/:notice/recipients', { notice }, { signal }),
  });
