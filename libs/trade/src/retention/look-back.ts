import { requireCalendarDate } from '../calendar.js';
import { daysAfter, yearsAfter } from './days.js';

/** Whether a defect found on a day is inside the 10-year look-back from certification or manufacture (46 USC 4310(c)(2)). */
export const insideLookBack = (builtOn: string, foundOn: string): boolean =>
  requireCalendarDate(foundOn) <= yearsAfter(builtOn, 10);

/** Notice is given within 30 days after discovery (33 CFR 179.05). */
export const noticeDue = (decidedOn: string): string => daysAfter(decidedOn, 30);

/** The follow-up report is due within 60 days after the initial report (33 CFR 179.15(a)). */
export const followUpDue = (initialReportOn: string): string => daysAfter(initialReportOn, 60);
