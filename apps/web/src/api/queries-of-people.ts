import { queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';

export const peopleQuery = queryOptions({
  queryKey: ['people'],
  queryFn: ({ signal }) => ask('/api/people', {}, { signal }),
});

export const devicesQuery = queryOptions({
  queryKey: ['devices'],
  queryFn: ({ signal }) => ask('/api/devices', {}, { signal }),
});

export const tokensQuery = queryOptions({
  queryKey: ['tokens'],
  queryFn: ({ signal }) => ask('/api/tokens', {}, { signal }),
});

export const openIdLinksQuery = (badge: string) =>
  queryOptions({
    queryKey: ['open id links', badge],
    queryFn: ({ signal }) => ask('/api/people/:badge/open-id-links', { badge }, { signal }),
  });
