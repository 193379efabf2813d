import type { Stop } from '../day/stops-of.js';
import type { ServiceStop } from './service-stop.js';

/**
 * The rules of the service that the tablet's own stops stand for, with no network. A hold may be one for safety, which
 * the tablet cannot tell: nobody goes on over it here. What is used up or not known is no rule that is gone on over.
 */
const RULES: Partial<Readonly<Record<Stop['rule'], string>>> = {
  expired: 'expired-lot',
  'not released': 'lot-not-released',
  'other material': 'material-not-in-schedule',
  before: 'layer-out-of-order',
  unsigned: 'hold-point-passed',
  'window passed': 'lay-up-window-passed',
  unidentified: 'unidentified-material',
};

/** The rules that a shift lead may go on over; null when one of the stops is lifted by nobody. */
export const rulesToLift = (here: readonly Stop[], service: readonly ServiceStop[]): readonly string[] | null => {
  const rules =
    service.length > 0
      ? service.map(({ rule, goesOn }) => (goesOn === 'shift lead' ? rule : undefined))
      : here.map(({ rule }) => RULES[rule]);
  const known = rules.filter((rule) => rule !== undefined);
  return known.length === 0 || known.length < rules.length ? null : [...new Set(known)];
};
