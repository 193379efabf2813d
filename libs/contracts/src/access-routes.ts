import { z } from 'zod';
import * as hulls from './access/own-hulls.js';
import * as roles from './access/roles.js';
import * as signIn from './access/sign-in.js';
import { Instant, PageQuery } from './envelope.js';
import { get, post } from './route.js';

/** People signing in, what they may, devices, tokens, and what a dealer sees of own hulls. */
export const accessRoutes = {
  readSession: get({
    path: '/api/session',
    tag: 'sign-in',
    summary: 'Who is signed in here, and on which device.',
    response: signIn.SessionView,
  }),
  signIn: post({
    path: '/api/sign-in',
    tag: 'sign-in',
    summary: 'Sign in by badge and PIN or passphrase; at an enrolled device this takes it over from whoever had it.',
    body: signIn.SignIn,
    response: signIn.SessionView,
  }),
  signOut: post({
    path: '/api/sign-out',
    tag: 'sign-in',
    summary: 'End this session.',
    response: signIn.SessionView,
  }),
  useFirstCode: post({
    path: '/api/first-sign-in',
    tag: 'sign-in',
    summary: 'Choose a PIN or passphrase with a one-time code, and sign in.',
    body: signIn.UseFirstCode,
    response: signIn.SessionView,
  }),
  changeSecret: post({
    path: '/api/secret',
    tag: 'sign-in',
    summary: 'Change the own PIN or passphrase; every other session of the person ends.',
    body: signIn.ChangeSecret,
    response: signIn.Done,
  }),
  startOpenId: get({
    path: '/api/open-id/start',
    tag: 'sign-in',
    summary: 'Sign in by the office: sends the browser to its provider (OpenID Connect).',
    redirects: true,
  }),
  finishOpenId: get({
    path: '/api/open-id/return',
    tag: 'sign-in',
    summary: 'Where the provider sends the browser back to: it is signed in when its account is linked to a badge.',
    produces: 'text/html; charset=utf-8',
  }),
  listOpenIdLinks: get({
    path: '/api/people/:badge/open-id-links',
    tag: 'people',
    summary: 'The accounts of the office that sign in a person.',
    response: z.array(signIn.OpenIdLinkView),
  }),
  linkOpenId: post({
    path: '/api/people/:badge/open-id-links',
    tag: 'people',
    summary: 'Link an account of the office to a person, who signs in by it from then on.',
    body: signIn.LinkOpenId,
    response: signIn.Done,
  }),
  unlinkOpenId: post({
    path: '/api/people/:badge/open-id-link-ends',
    tag: 'people',
    summary: 'End the link of an account of the office to a person, and every session of the person.',
    body: signIn.LinkOpenId,
    response: signIn.Done,
  }),
  giveFirstCode: post({
    path: '/api/people/:badge/first-codes',
    tag: 'people',
    summary: 'Give a person a one-time code to choose a PIN or passphrase with; the one before is void.',
    response: signIn.OneTimeCode,
  }),
  endSessions: post({
    path: '/api/people/:badge/session-ends',
    tag: 'people',
    summary: 'End every session and token of a person at once.',
    response: signIn.Done,
  }),
  grantRole: post({
    path: '/api/people/:badge/roles',
    tag: 'people',
    summary: 'Give a person one more role.',
    body: roles.GrantRole,
    response: roles.RoleChanged,
  }),
  endRole: post({
    path: '/api/people/:badge/role-ends',
    tag: 'people',
    summary: 'End a role of a person; what was done under it stands.',
    body: roles.EndRole,
    response: roles.RoleChanged,
  }),
  giveEnrolmentCode: post({
    path: '/api/devices/:device/enrolment-codes',
    tag: 'people',
    summary: 'Give a one-time code with which a browser becomes this device.',
    response: signIn.OneTimeCode,
  }),
  enrolDevice: post({
    path: '/api/enrolments',
    tag: 'sign-in',
    summary: 'Make this browser a device of the shop, with the one-time code from the desk.',
    body: signIn.EnrolDevice,
    response: signIn.EnrolledDevice,
  }),
  revokeDevice: post({
    path: '/api/devices/:device/revocations',
    tag: 'people',
    summary: 'Take its credential from a lost or replaced device. What it still sends is kept for quality.',
    body: roles.RevokeDevice,
    response: roles.RevokedDevice,
  }),
  createToken: post({
    path: '/api/tokens',
    tag: 'people',
    summary: 'Make a token for a program; it is shown once.',
    body: signIn.CreateToken,
    response: signIn.CreatedToken,
  }),
  listTokens: get({
    path: '/api/tokens',
    tag: 'people',
    summary: 'List tokens, without what they are.',
    response: z.array(signIn.TokenView),
  }),
  revokeToken: post({
    path: '/api/tokens/:token/revocations',
    tag: 'people',
    summary: 'Revoke a token.',
    response: signIn.Done,
  }),
  listUnproved: get({
    path: '/api/unproved-entries',
    tag: 'sign-in',
    summary:
      'What devices sent in the name of somebody who gave no PIN, such as a signature off line; it waits for a word.',
    response: z.array(roles.UnprovedEntry),
  }),
  confirmEntry: post({
    path: '/api/unproved-entries/:entry/confirmations',
    tag: 'sign-in',
    summary: 'Confirm or refuse what a device sent in the own name. Until then a signature does not count.',
    body: roles.ConfirmEntry,
    response: roles.EntryConfirmed,
  }),
  listKeptEntries: get({
    path: '/api/kept-entries',
    tag: 'people',
    summary: 'What revoked devices sent, kept for quality to admit or set aside.',
    response: z.array(roles.KeptEntry),
  }),
  decideOnEntry: post({
    path: '/api/kept-entries/:entry/decisions',
    tag: 'people',
    summary: 'Admit what a revoked device sent, as it was made, or set it aside with the reason.',
    body: roles.DecideOnEntry,
    response: roles.EntryDecided,
  }),
  listOwnHulls: get({
    path: '/api/own-hulls',
    tag: 'own hulls',
    summary: 'The hulls that are or were last with the dealer who asks.',
    query: PageQuery,
    response: hulls.OwnHullPage,
  }),
  readOwnHull: get({
    path: '/api/own-hulls/:number',
    tag: 'own hulls',
    summary: 'One hull of the dealer who asks. A hull of somebody else is answered as one that is not there.',
    response: hulls.OwnHull,
  }),
  drawOwnRecord: get({
    path: '/api/own-hulls/:number/build-record.pdf',
    tag: 'own hulls',
    summary: 'Its build record as PDF, in the cut for dealers; asOf draws an earlier state.',
    query: z.object({ asOf: Instant.optional() }),
    produces: 'application/pdf',
  }),
} as const;
