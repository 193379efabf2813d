import { useQueryClient } from '@tanstack/react-query';
import { partQuery } from '../api/queries.js';

/** Reads a part anew after something was recorded on it. */
export const useLookAgain = (part: string): (() => void) => {
  const client = useQueryClient();
  return () => void client.invalidateQueries({ queryKey: partQuery(part).queryKey });
};
