/** The texts of recording something. */
export const entryEn = {
  'entry.choose': 'choose',
  'entry.when': 'When, if not now (clock of the plant)',
  'entry.sure': 'Confirm',
  'entry.back': 'Back',
  'entry.yes': 'Yes, record it',
  'entry.yesDo': 'Yes, do it',
  'entry.notRecorded': 'Not recorded.',
  'entry.kept': 'What you typed is kept here. Mend it and send it again: it is recorded once.',
  'entry.unreachable': 'The service does not answer. Check that it runs and that this device reaches it.',
  'entry.unit': 'Unit',
  'entry.basis': 'How it is known',
  'entry.found': 'It is kept as it happened. This does not fit a rule, and waits for quality:',
  'entry.warned': 'To be looked at:',
  'entry.rowOf': '{name}, {number}',
  'entry.forRoles': '{what}: for the roles {roles}.',
} as const;
