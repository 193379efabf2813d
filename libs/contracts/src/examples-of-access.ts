import { atTheDesk, told } from './example-parts.js';

/** Requests about people signing in, devices and tokens; invented throughout. */
export const EXAMPLES_OF_ACCESS = {
  signIn: { badge: 'LAM-07', secret: '402817' },
  useFirstCode: { badge: 'LAM-07', code: 'K7QM-2XWD-9TFR', secret: '402817' },
  changeSecret: { present: '402817', secret: '918264' },
  linkOpenId: { subject: '7c1f0a52-5f0e-4c2b-9f0b-3f6a7f0d9e11' },
  unlinkOpenId: { subject: '7c1f0a52-5f0e-4c2b-9f0b-3f6a7f0d9e11' },
  enrolDevice: { code: 'P3HN-8VZC-4KJW' },
  createToken: { badge: 'QUA-01', device: 'DESK', name: 'monthly figures', scopes: ['read', 'papers'], days: 90 },
  grantRole: atTheDesk({ role: 'patcher' }),
  endRole: atTheDesk({ role: 'inspector', reason: 'Works in the repair bay now.' }),
  revokeDevice: atTheDesk({ reason: 'Lost on the yard.' }),
  confirmEntry: told({ enteredBy: 'INS-02', confirmed: true }),
  decideOnEntry: told({
    enteredBy: 'QUA-01',
    admitted: true,
    reason: 'Made before the tablet was lost; the crew confirms it.',
  }),
};
