import { queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';

/** The issues of the certificate of a hull, the newest first. */
export const certificatesQuery = (number: string) =>
  queryOptions({
    queryKey: ['certificates', number],
    queryFn: ({ signal }) => ask('/api/hulls/:number/certificates', { number }, { signal }),
    // One that is being made is there in a moment.
    refetchInterval: ({ state }) => (state.data?.some(({ file }) => file === null) ? 2_000 : false),
  });
