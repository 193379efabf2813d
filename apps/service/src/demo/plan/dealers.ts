import { draft, type Draft } from './step.js';
import { instant } from './working-days.js';

/** Dealers of the demo; all invented. */
export const DEALERS = [
  { code: 'NLM', name: 'Northlight Marine', place: 'Calder Bay' },
  { code: 'PRW', name: 'Pell Reach Watercraft', place: 'Pell Reach' },
  { code: 'HHB', name: 'Harrow Point Boatyard', place: 'Harrow Point' },
  { code: 'SLW', name: 'Sallow Wharf', place: 'Lower Sallow' },
] as const;

export const dealers = (): readonly Draft[] =>
  DEALERS.map((dealer) =>
    draft('registerDealer', { name: `dealer ${dealer.code}`, at: instant(0, '06:10'), by: 'ADMIN' }, dealer),
  );
