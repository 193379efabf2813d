import type { DaySheet } from '@hull-record/contracts';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useMemo, useState } from 'react';
import { ask } from '../api/ask.js';
import { clock } from '../device/clock.js';
import { deviceDatabase } from '../device/database.js';
import { network } from '../device/network.js';
import { useOutbox } from '../outbox/use-outbox.js';
import type { Day } from './now.js';
import { withEntries } from './with-entries.js';

const NAME = 'day sheet';
/** On poor Wi-Fi it is given up after so long, and what is kept serves, ms. */
const PATIENCE_MS = 15_000;
const AGAIN_MS = 30_000;
/** Older than this it is said how old it is, ms. */
const OLD_MS = 3 * 60_000;

const readSheet = async (): Promise<DaySheet> => {
  const sheet = await ask('/api/day-sheet', {}, { signal: AbortSignal.timeout(PATIENCE_MS) });
  network.tried(true);
  await (await deviceDatabase()).put('answers', { name: NAME, answer: sheet, at: sheet.at }).catch(() => undefined);
  return sheet;
};

const keptSheet = async (): Promise<DaySheet | null> => {
  const kept = await (await deviceDatabase()).get('answers', NAME);
  const sheet = kept?.answer as DaySheet | undefined;
  // One that an older version of the app kept says no rule: it is the one that a plant judges by until it says another.
  return sheet === undefined ? null : { ...sheet, marginRule: sheet.marginRule ?? '3 C' };
};

interface DayAnswer {
  readonly day: Day | null;
  /** When the sheet was read, when that is a while ago. */
  readonly oldAt: string | null;
  /** Why there is none: it was asked for in vain, and none is kept here. */
  readonly error: Error | null;
  readonly again: () => void;
}

/** The day of the station: the newest sheet that this tablet has, with what was entered here since. */
export const useDay = (): DayAnswer => {
  const client = useQueryClient();
  const asked = useQuery({ queryKey: [NAME], queryFn: readSheet, refetchInterval: AGAIN_MS });
  const kept = useQuery({ queryKey: ['kept', NAME], queryFn: keptSheet, staleTime: Infinity });
  const { all, justSent, sent } = useOutbox();
  useEffect(() => {
    if (sent > 0) void client.invalidateQueries({ queryKey: [NAME] });
  }, [client, sent]);
  const sheet = asked.data ?? kept.data ?? null;
  const day = useMemo(() => {
    if (sheet === null) return null;
    const since = justSent.filter(({ at }) => at >= Date.parse(sheet.at)).map(({ entry }) => entry);
    return withEntries(
      sheet,
      [...since, ...all].sort((a, b) => a.order - b.order),
    );
  }, [sheet, all, justSent]);
  const now = useNow();
  const isOld = sheet !== null && now - Date.parse(sheet.at) > OLD_MS;
  return {
    day,
    oldAt: isOld ? sheet.at : null,
    error: kept.isPending ? null : asked.error,
    again: () => void asked.refetch(),
  };
};

/** Now by the service's clock, ms since 1970; told anew every ten seconds. */
export const useNow = (): number => {
  const [now, setNow] = useState(clock.now);
  useEffect(() => {
    const timer = setInterval(() => setNow(clock.now()), 10_000);
    return () => clearInterval(timer);
  }, []);
  return now;
};
