import { queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';

export const ownNewsQuery = queryOptions({
  queryKey: ['own news'],
  queryFn: ({ signal }) => ask('/api/own-news', {}, { signal }),
});

export const ownHullQuery = (number: string) =>
  queryOptions({
    queryKey: ['own hull', number],
    queryFn: ({ signal }) => ask('/api/own-hulls/:number', { number }, { signal }),
  });

export const ownClaimsQuery = (number: string) =>
  queryOptions({
    queryKey: ['own claims', number],
    queryFn: ({ signal }) => ask('/api/own-hulls/:number/claims', { number }, { signal }),
  });

export const ownRepairsQuery = (number: string) =>
  queryOptions({
    queryKey: ['own repairs', number],
    queryFn: ({ signal }) => ask('/api/own-hulls/:number/outside-repairs', { number }, { signal }),
  });
