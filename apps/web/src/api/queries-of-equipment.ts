import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';

export const equipmentQuery = queryOptions({
  queryKey: ['equipment'],
  queryFn: ({ signal }) => ask('/api/equipment', {}, { signal }),
});

export const checksQuery = (code: string) =>
  queryOptions({
    queryKey: ['checks', code],
    queryFn: ({ signal }) => ask('/api/equipment/:code/checks', { code }, { signal }),
  });

export const equipmentSuspectsQuery = (code: string) =>
  infiniteQueryOptions({
    queryKey: ['equipment suspects', code],
    queryFn: ({ pageParam, signal }) =>
      ask('/api/equipment/:code/suspects', { code }, { query: { limit: '50', cursor: pageParam }, signal }),
    initialPageParam: '',
    getNextPageParam: ({ next }) => next,
  });

export const gunQuery = (gun: string) =>
  queryOptions({
    queryKey: ['gun', gun],
    queryFn: ({ signal }) => ask('/api/guns/:gun', { gun }, { signal }),
  });

export const moldsQuery = queryOptions({
  queryKey: ['molds'],
  queryFn: ({ signal }) => ask('/api/molds', {}, { signal }),
});

export const moldQuery = (mold: string) =>
  queryOptions({
    queryKey: ['mold', mold],
    queryFn: ({ signal }) => ask('/api/molds/:mold', { mold }, { signal }),
  });
