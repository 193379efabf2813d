import type { Recomputing } from '@hull-record/contracts';
import { h } from './dom.js';
import { counted, moment } from './words.js';

/** Says above figures that they are being worked out anew; nothing while they are up to date. */
export const recomputingNote = (recomputing: Recomputing | null | undefined): HTMLElement | null =>
  recomputing
    ? h(
        'p',
        { role: 'status' },
        h('b', {}, 'Being recomputed: '),
        `figures may change. ${counted(recomputing.recomputations.length, 'correction')} since ${moment(recomputing.since)}; look again in a moment.`,
      )
    : null;
