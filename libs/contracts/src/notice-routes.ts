import { z } from 'zod';
import * as notices from './notices.js';
import { get, post } from './route.js';

/** The duty to notify, notices of a defect, their letters, and the reports to the authority. */
export const noticeRoutes = {
  decideDuty: post({
    path: '/api/holds/:hold/duty-decisions',
    tag: 'notices',
    summary: 'Record what was decided about the duty to notify.',
    body: notices.DecideDuty,
    response: notices.DutyReceipt,
  }),
  readDuty: get({
    path: '/api/holds/:hold/duty',
    tag: 'notices',
    summary: 'The duty to notify as decided, the dates that run from it, and the earliest arguable day.',
    response: notices.DutyView,
  }),
  giveNotice: post({
    path: '/api/holds/:hold/notices',
    tag: 'notices',
    summary: 'Write a notice of a defect.',
    body: notices.GiveNotice,
    response: notices.NoticeReceipt,
  }),
  readNotice: get({
    path: '/api/notices/:notice',
    tag: 'notices',
    summary: 'One notice: its dates, figures, and how many are told. No personal data.',
    response: notices.NoticeView,
  }),
  listRecipients: get({
    path: '/api/notices/:notice/recipients',
    tag: 'notices',
    summary: 'Dealers, first purchasers and later owners a notice goes to, with addresses.',
    response: z.array(notices.Recipient),
  }),
  mailNotice: post({
    path: '/api/notices/:notice/mailings',
    tag: 'notices',
    summary: 'Record letters of a notice that were mailed.',
    body: notices.MailNotice,
    response: notices.MailingReceipt,
  }),
  returnMailing: post({
    path: '/api/mailings/:mailing/returns',
    tag: 'notices',
    summary: 'Record that a letter came back.',
    body: notices.ReturnMailing,
    response: notices.ReturnReceipt,
  }),
  reportNotice: post({
    path: '/api/notices/:notice/reports',
    tag: 'notices',
    summary: 'Record that a report was sent to the authority, with the figures of that moment.',
    body: notices.ReportNotice,
    response: notices.ReportReceipt,
  }),
  noticeLetters: get({
    path: '/api/notices/:notice/letters.pdf',
    tag: 'papers',
    summary: 'The letters of a notice as PDF, one for each recipient with an address. Personal data.',
    produces: 'application/pdf',
  }),
  mailMerge: get({
    path: '/api/notices/:notice/recipients.csv',
    tag: 'notices',
    summary: 'The recipients as CSV for mail merge, no cell of which a spreadsheet takes for a formula. Personal data.',
    produces: 'text/csv; charset=utf-8; header=present',
  }),
  initialReport: get({
    path: '/api/notices/:notice/initial-report.pdf',
    tag: 'papers',
    summary: 'A draft of the initial report to the authority (33 CFR 179.13), as PDF.',
    produces: 'application/pdf',
  }),
  followUpReport: get({
    path: '/api/notices/:notice/follow-up-report.pdf',
    tag: 'papers',
    summary: 'A draft of the follow-up report (33 CFR 179.15), as PDF.',
    produces: 'application/pdf',
  }),
} as const;
