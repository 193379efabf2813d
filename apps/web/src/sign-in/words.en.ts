/** The texts of signing in, and of making a browser a device. */
export const signInEn = {
  'signIn.lead': 'Each entry is kept in the name of whoever made it.',
  'signIn.demo':
    'Demo, invented throughout: sign in as QUA-01 (quality), LAM-01 (laminator), INS-01 (inspector), WAR-01 (warranty), DLR-NLM (dealer), AUD-01 (auditor) or ADMIN, each with PIN 402817. These PINs work only while the demo is on.',
  'signIn.badge': 'Badge',
  'signIn.secret': 'PIN or passphrase',
  'signIn.secretHint': 'A PIN serves at an enrolled device and at the machine itself; elsewhere a passphrase does.',
  'signIn.office': 'Sign in by {name}',
  'signIn.firstTime': 'First time, or PIN lost',
  'signIn.chooseOwn': 'Choose your own',
  'signIn.codeHow':
    'An administrator gives you a one-time code. For the first administrator the service prints it when it starts.',
  'signIn.code': 'One-time code',
  'signIn.newSecret': 'New PIN or passphrase',
  'signIn.rules': 'Six digits or more, or twelve characters or more.',
  'signIn.choose': 'Choose it and sign in',
  'signIn.device': 'This is device {device}. Whoever signs in here takes it over.',
  'signIn.noDevice': 'This browser is not an enrolled device: entries made here name the desk.',
  'enrol.title': 'Make this browser a device',
  'enrol.lead': 'Enter the one-time code that an administrator gave for this device. It serves for half an hour.',
  'enrol.code': 'One-time code',
  'enrol.do': 'Enrol this browser',
  'enrol.done': 'This browser is device {device} now.',
} as const;
