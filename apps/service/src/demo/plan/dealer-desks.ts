import { DEALERS } from './dealers.js';
import { draft, type Draft } from './step.js';
import { instant } from './working-days.js';

/** The badge of somebody at a dealer's desk. */
export const deskOf = (dealer: string): string => `DLR-${dealer}`;

/** One person at the desk of each dealer, who sees the dealer's own hulls. */
export const dealerDesks = (): readonly Draft[] =>
  DEALERS.map(({ code, name }) =>
    draft(
      'registerPerson',
      { name: `person ${deskOf(code)}`, at: instant(0, '06:20'), by: 'ADMIN' },
      { badge: deskOf(code), name: `Demo desk of ${name}`, roles: ['dealer'], dealer: code },
    ),
  );
