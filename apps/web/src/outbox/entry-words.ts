import type { Key } from '../language/catalogue.js';

/** A text that names a kind of entry; it takes no values. */
type KindOfEntry = Extract<Key, `outbox.kind.${string}`>;

/** What an entry is, by the path it goes to. A new write of the station is one more line here. */
const KINDS = {
  '/api/layers': 'outbox.kind.layer',
  '/api/parts/:part/layers': 'outbox.kind.layer',
  '/api/layers/:layer/used': 'outbox.kind.used',
  '/api/layers/:layer/readings': 'outbox.kind.readings',
  '/api/layers/:layer/signatures': 'outbox.kind.signature',
  '/api/go-ons': 'outbox.kind.goOn',
  '/api/parts/:part/defects': 'outbox.kind.defect',
  '/api/defects/:defect/photos': 'outbox.kind.photo',
  '/api/unidentified/:entry/photos': 'outbox.kind.photo',
  '/api/defects/:defect/answers': 'outbox.kind.answer',
  '/api/parts/:part/repairs': 'outbox.kind.repair',
  '/api/parts/:part/touch-ups': 'outbox.kind.touchUp',
  '/api/repairs/:repair/readings': 'outbox.kind.readings',
  '/api/repairs/:repair/acceptances': 'outbox.kind.judgement',
  '/api/touch-ups/:touchUp/acceptances': 'outbox.kind.judgement',
  '/api/repairs/:repair/re-inspections': 'outbox.kind.inspection',
  '/api/unproved-entries/:entry/confirmations': 'outbox.kind.confirmation',
} as const satisfies Readonly<Record<string, KindOfEntry>>;

/** The name of the text that says what an entry is. */
export const kindOfEntry = (path: string): KindOfEntry =>
  (KINDS as Readonly<Record<string, KindOfEntry>>)[path] ?? 'outbox.kind.other';
