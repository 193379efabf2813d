import { standing } from '../facts/standing.js';

/** SQL: the lot, by its root, that a tank held at an instant; null before its first fill. */
export const lotInTankAt = (tank: string, at: string): string => `(
  select held.root from fact.lot held where held.tank_id = ${tank} and held.happened_at <= ${at} and ${standing('held')}
  order by held.happened_at desc, held.fill_number desc limit 1)`;

/** SQL of one row, the hook-up that feeds a gun at an instant, as lot_id and tank_id; no row before the first. */
export const hookUpAt = (gun: string, feed: string, at: string): string => `(
  select fed.lot_id, fed.tank_id from fact.hook_up fed
  where fed.gun_id = ${gun} and fed.feed = ${feed} and fed.happened_at <= ${at} and ${standing('fed')}
  order by fed.happened_at desc, fed.recorded_at desc, fed.id limit 1)`;
