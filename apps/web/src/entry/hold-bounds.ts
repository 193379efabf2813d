import type { EntryField, Said } from './entry-field.js';
import { given } from './entry-field.js';
import { plantInstant } from './plant-instant.js';

type Text = (name: 'holds.zone' | 'holds.zoneHint' | 'holds.from' | 'holds.fromHint' | 'holds.until') => string;

/** Fields for how far a hold reaches: a zone of the laminate schedule, and when what it reaches was made. */
export const boundsFields = (t: Text): readonly EntryField[] => [
  { name: 'zone', label: t('holds.zone'), hint: t('holds.zoneHint') },
  { name: 'from', label: t('holds.from'), kind: 'moment', hint: t('holds.fromHint') },
  { name: 'until', label: t('holds.until'), kind: 'moment' },
];

/** What was said of it, for the service; what was left out bounds nothing. Times are of the plant's clock. */
export const boundsSaid = (
  said: Said,
  clock: string,
): { readonly zone?: string; readonly from?: string; readonly until?: string } => ({
  ...given('zone', said('zone')),
  ...(said('from') === '' ? {} : { from: plantInstant(said('from'), clock) }),
  ...(said('until') === '' ? {} : { until: plantInstant(said('until'), clock) }),
});
