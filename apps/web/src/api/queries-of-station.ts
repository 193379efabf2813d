import { queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';

/** What devices sent in the name of somebody who gave no PIN; it waits for a word. */
export const unprovedQuery = queryOptions({
  queryKey: ['unproved entries'],
  queryFn: ({ signal }) => ask('/api/unproved-entries', {}, { signal }),
});
