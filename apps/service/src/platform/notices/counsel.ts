import type { DutyView } from '@hull-record/contracts';
import { may } from '@hull-record/contracts/who-may';
import { personNow } from '../access/call.js';

/** Whether who calls may read the advice with which a duty was decided: those who decide it or give notices, and nobody else. */
export const mayReadCounsel = (): boolean =>
  may(personNow().roles, 'decideDuty') || may(personNow().roles, 'giveNotice');

/** A decision as who calls may read it. */
export const asReadBy = <T extends Pick<DutyView['decisions'][number], 'counsel'>>(decision: T): T =>
  mayReadCounsel() ? decision : { ...decision, counsel: null };
