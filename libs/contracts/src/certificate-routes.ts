import { z } from 'zod';
import * as certificates from './certificates.js';
import { get, post } from './route.js';

/** Certificates of hulls, and the journal that they rest on. */
export const certificateRoutes = {
  issueCertificate: post({
    path: '/api/hulls/:number/certificates',
    tag: 'certificates',
    summary: 'Issue the certificate of a released hull; an issue after the first replaces the one before.',
    body: certificates.IssueCertificate,
    response: certificates.CertificateReceipt,
  }),
  listCertificates: get({
    path: '/api/hulls/:number/certificates',
    tag: 'certificates',
    summary: 'The issues of the certificate of a hull, the newest first.',
    response: z.array(certificates.CertificateView),
  }),
  readCertificate: get({
    path: '/api/certificates/:certificate/file.pdf',
    tag: 'certificates',
    summary: 'An issue as the PDF that was signed; it is never drawn again.',
    produces: 'application/pdf',
  }),
  withdrawCertificate: post({
    path: '/api/certificates/:certificate/withdrawals',
    tag: 'certificates',
    summary: 'Withdraw an issue, with the reason.',
    body: certificates.WithdrawCertificate,
    response: certificates.WithdrawalReceipt,
  }),
  checkCertificate: post({
    path: '/api/certificate-checks',
    tag: 'certificates',
    summary: 'Whether a certificate is genuine and current: by the code on it, or by the digest of the file.',
    body: certificates.CheckCertificate,
    response: certificates.CheckedCertificate,
  }),
  readOwnCertificate: get({
    path: '/api/own-hulls/:number/certificate.pdf',
    tag: 'own hulls',
    summary: 'The newest issue of the certificate of an own hull.',
    produces: 'application/pdf',
  }),
  verifyJournal: get({
    path: '/api/journal/verification',
    tag: 'certificates',
    summary: 'Compare the whole database with its journal, and say what that proves.',
    response: certificates.JournalVerification,
  }),
} as const;
