import { useQueryClient } from '@tanstack/react-query';
import { useCallback } from 'react';
import { partQuery } from '../api/queries.js';

/** Reads a part anew after something was recorded on it. */
export const useLookAgain = (part: string): (() => Promise<void>) => {
  const client = useQueryClient();
  return useCallback(() => client.invalidateQueries({ queryKey: partQuery(part).queryKey }), [client, part]);
};
