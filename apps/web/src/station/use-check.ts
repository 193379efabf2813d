import { useQuery } from '@tanstack/react-query';
import { post } from '../api/ask.js';
import type { PostBody } from '../api/contract.js';
import { clock } from '../device/clock.js';
import { holding } from '../device/holder.js';
import type { ServiceStop } from './service-stop.js';

type Layer = Omit<PostBody<'/api/parts/:part/layers/check'>, 'id' | 'enteredBy' | 'device' | 'happenedAt'>;

/** It is not waited for longer than this: the tablet judges by itself then, ms. */
const PATIENCE_MS = 5_000;

/** What the service would find wrong with a layer on each of some parts; nothing while it is not reached. */
export const useCheck = (parts: readonly string[], layer: Layer, key: readonly string[]): readonly ServiceStop[] => {
  const { data } = useQuery({
    queryKey: ['check', ...parts, ...key],
    enabled: parts.length > 0 && holding.get()?.proved === true,
    queryFn: async () => {
      const answers = await Promise.all(parts.map((part) => checkOne(part, layer)));
      return answers.flatMap(({ stops }) => stops);
    },
  });
  return data ?? [];
};

const checkOne = (part: string, layer: Layer) =>
  post(
    '/api/parts/:part/layers/check',
    { part },
    {
      ...layer,
      ...{ id: crypto.randomUUID(), enteredBy: holding.get()?.badge ?? '', device: holding.place().device ?? '' },
      happenedAt: clock.instant(),
    },
    AbortSignal.timeout(PATIENCE_MS),
  );
