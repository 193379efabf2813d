import * as cases from './cases.js';
import { get, post } from './route.js';

/** Cases: what claimed hulls have in common, by settings that are frozen first. */
export const caseRoutes = {
  openCase: post({
    path: '/api/cases',
    tag: 'cases',
    summary: 'Open a case; one prepared at the direction of counsel is seen by those named alone.',
    body: cases.OpenCase,
    response: cases.CaseReceipt,
  }),
  listCases: get({
    path: '/api/cases',
    tag: 'cases',
    summary: 'The cases that the caller may see, the newest first.',
    query: cases.ListCasesQuery,
    response: cases.CasePage,
  }),
  readCase: get({
    path: '/api/cases/:case',
    tag: 'cases',
    summary: 'One case: its frozen settings, and every look at it.',
    response: cases.CaseView,
  }),
  readGroups: get({
    path: '/api/cases/:case/groups',
    tag: 'cases',
    summary: 'How large the groups are within which hulls would be compared, for each choice; looks at no claim.',
    query: cases.ReadGroupsQuery,
    response: cases.CaseGroups,
  }),
  freezeCase: post({
    path: '/api/cases/:case/settings',
    tag: 'cases',
    summary: 'Freeze how a case is judged, under a hash, with seed and method.',
    body: cases.FreezeCase,
    response: cases.FreezeReceipt,
  }),
  lookAtCase: post({
    path: '/api/cases/:case/looks',
    tag: 'cases',
    summary: 'Look at a case by frozen settings; a job works it out, and the look is kept and counted.',
    body: cases.LookAtCase,
    response: cases.LookReceipt,
  }),
  readLook: get({
    path: '/api/cases/:case/looks/:look',
    tag: 'cases',
    summary: 'One look: how far it is, and what was found.',
    response: cases.LookView,
  }),
  computeLookAgain: get({
    path: '/api/cases/:case/looks/:look/again',
    tag: 'cases',
    summary: 'Work out a look again from the inputs that were kept, and compare to the digit.',
    response: cases.LookAgain,
  }),
} as const;
