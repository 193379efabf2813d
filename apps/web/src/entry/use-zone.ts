import { useQuery } from '@tanstack/react-query';
import { sessionQuery } from '../api/queries.js';

/** The time zone of the plant, IANA name: times of a form are of its clock. */
export const useZone = (): string => useQuery(sessionQuery).data?.plant.timeZone ?? 'UTC';
