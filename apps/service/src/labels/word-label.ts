import { labelPath, type Labelled } from '@hull-record/contracts';
import type { LabelView } from '@hull-record/paper';
import { isMaterialRole, labelCaution } from '@hull-record/trade';
import type { LabelledRow } from './labelled.sql.js';

type Words = Omit<LabelView, 'path' | 'code'>;

/** Words what is recorded of a thing as its label prints it. A badge has no name on it: names are personal data. */
export const wordLabel = (of: Labelled, row: LabelledRow): LabelView => ({
  path: labelPath({ of, code: row.code }),
  code: row.code,
  ...WORDS[of](row),
});

const KIND_OF_LOT = {
  received: 'Lot',
  mixed: 'Bucket',
  tank: 'Tank fill',
  cut: 'Kit',
  unidentified: 'Unidentified material',
} as const;

const WORDS: Readonly<Record<Labelled, (row: LabelledRow) => Words>> = {
  lot: (row) => ({
    ...kindOf(KIND_OF_LOT[row.origin ?? 'received'], row),
    ...aboutLot(row),
    details: detailsOfLot(row),
  }),
  container: (row) => ({
    ...kindOf(capital(row.kind ?? 'container'), row),
    ...aboutLot(row),
    details: [`Lot ${row.lot ?? ''}`, ...detailsOfLot(row)],
  }),
  part: (row) => ({
    kind: 'Part',
    title: capital(row.kind ?? ''),
    details: [modelOf(row), row.modelName ?? ''],
    caution: null,
  }),
  hull: (row) => ({ kind: 'Hull', title: modelOf(row), details: [row.modelName ?? ''], caution: null }),
  equipment: ({ kind = '', description = '' }) => ({
    kind: 'Equipment',
    title: capital(kind),
    details: [description],
    caution: null,
  }),
  badge: ({ roles = [] }) => ({ kind: 'Badge', title: capital(roles.join(', ')), details: [], caution: null }),
};

/** A mix is worded by what went into it, and cautioned as one that cures. */
const aboutLot = (row: LabelledRow): Pick<LabelView, 'title' | 'caution'> => {
  const { origin, material, role, looks, madeOf = [] } = row;
  if (origin === 'mixed') return { title: madeOf.join(' + '), caution: labelCaution('mix') };
  if (origin === 'cut') return { title: madeOf.join(' + '), caution: null };
  const caution = isMaterialRole(role ?? '') ? labelCaution(role as Parameters<typeof labelCaution>[0]) : null;
  return { title: material ?? looks ?? '', caution };
};

const detailsOfLot = ({ supplierLot, expiresOn }: LabelledRow): readonly string[] => [
  ...(expiresOn ? [`Expires ${expiresOn}`] : []),
  ...(supplierLot ? [`Supplier lot ${supplierLot}`] : []),
];

const kindOf = (kind: string, { role }: LabelledRow): Pick<LabelView, 'kind'> => ({
  kind: role ? `${kind} · ${role}` : kind,
});

const modelOf = ({ model = '' }: LabelledRow): string => `Model ${model}`;

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
