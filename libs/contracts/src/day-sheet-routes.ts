import { DaySheet } from './day-sheet.js';
import { get } from './route.js';

/** What a station keeps for when there is no network. */
export const daySheetRoutes = {
  readDaySheet: get({
    path: '/api/day-sheet',
    tag: 'layers',
    summary: 'The day of a station: parts to be worked on, lots, equipment and people, to be kept on a tablet.',
    response: DaySheet,
  }),
} as const;
