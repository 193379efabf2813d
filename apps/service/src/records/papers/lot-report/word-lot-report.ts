import type { LotReportView } from '@hull-record/paper';
import { wordDisposition } from '../../word-judgements.js';
import { amount, decimal, inline, kilograms, limits, unit } from '../../word-values.js';
import { percent } from '../../word-used.js';
import { sentence, wordPaper } from '../../../platform/papers/word-paper.js';
import { verdictsOf } from '../../../platform/views/verdicts.js';
import { wordReadings } from '../../word-readings.js';
import type { LotFacts } from './lot-facts.js';
import { wordReach } from './word-reach.js';

const ORIGINS: Readonly<Record<string, string>> = {
  received: 'received',
  mixed: 'bucket, mixed here',
  tank: 'tank fill',
  cut: 'kit, cut here',
  unidentified: 'unidentified: nobody could name it',
};

const WELL_MIXED =
  'Mass fractions of received lots, the largest first. Assumes a well-mixed tank: what was drawn from a tank is of the ' +
  'lots in it in the shares that they had then.';

/** Words the facts of a lot as its report prints them. */
export const wordLotReport = (facts: LotFacts): LotReportView => {
  const { lot } = facts;
  const { paper, time } = wordPaper(facts.plant, facts.newest, facts.recomputing);
  return {
    ...paper,
    lot: lot.code,
    ...stateOf(facts),
    identity: identityOf(facts, time.at(lot.happened_at)),
    certificate: Object.entries(lot.certificate).map(([name, value]) => [name, String(value)] as const),
    certified: certifiedOf(lot.certified),
    history: facts.events.map(({ what, why, by, happened_at }) => ({
      ...{ when: time.at(happened_at), what: sentence(what), why, by },
    })),
    containers: wordContainers(facts),
    madeOf: facts.made ? wordMadeOf(facts) : [],
    assumes: facts.made ? WELL_MIXED : null,
    readings: wordReadings(facts, lot.id, time),
    verdicts: verdictsOf(facts.verdicts, lot.id),
    nonconformities: facts.nonconformities.map((row) => {
      const decided = facts.dispositions.get(row.id);
      return {
        ...{ rule: sentence(row.rule.replaceAll('-', ' ')), detail: row.detail, when: time.at(row.happened_at) },
        disposition: decided === undefined ? null : wordDisposition(decided, time),
      };
    }),
    ...wordReach(facts, time),
    ...wordBalance(facts),
  };
};

/** A hold goes before the state: whoever reads the headline alone must not use it. */
const stateOf = ({ lot, holds }: LotFacts): Pick<LotReportView, 'state' | 'released'> => {
  if (holds.length > 0)
    return {
      state: `On hold for ${holds.join(' and ')}: do not use it. Its state by itself: ${lot.state}.`,
      released: false,
    };
  const last = lot.expires_on === null ? 'no last day is recorded' : `the last day is ${lot.expires_on}`;
  const says = lot.state === 'released' ? `it may be used until its last day: ${last}` : SAYS[lot.state];
  return { state: `${sentence(lot.state)}: ${says ?? 'see its history'}.`, released: lot.state === 'released' };
};

const SAYS: Readonly<Record<string, string>> = {
  quarantined: 'it may not be used yet',
  held: 'it may not be used until it is released',
  rejected: 'it may not be used',
};

const identityOf = ({ lot }: LotFacts, when: string): LotReportView['identity'] => [
  ['Origin', ORIGINS[lot.origin] ?? lot.origin],
  ['Tank', lot.tank],
  ['Material', lot.material_name === null ? null : `${lot.material_name} (${lot.material ?? ''})`],
  ['Role', lot.role],
  ['Supplier', lot.supplier],
  ['Supplier’s lot', lot.supplier_lot],
  ['It looked like', lot.looks],
  ['It stood', lot.found_at],
  ['Amount', `${inline(amount(lot))}, ${lot.basis}`],
  ['Made on', lot.made_on],
  ['Last day of use', lot.expires_on ?? (lot.origin === 'received' ? 'none recorded' : null)],
  [lot.origin === 'received' ? 'Received' : 'Recorded as made', `${when}, entered by ${lot.by}`],
];

const certifiedOf = (certified: LotFacts['lot']['certified']): LotReportView['certified'] =>
  certified === null
    ? []
    : [
        ...(certified.catalystWindow
          ? [['Catalyst, percent of resin by mass', limits(certified.catalystWindow)] as const]
          : []),
        ...(certified.layUpWindow ? [['Time to the next layer', limits(certified.layUpWindow)] as const] : []),
        ...(certified.minimumBarcol === undefined
          ? []
          : [['Barcol hardness', `at least ${certified.minimumBarcol}`] as const]),
      ];

const wordContainers = ({ containers }: LotFacts): LotReportView['containers'] =>
  containers.map((box) => ({
    label: box.label,
    kind: box.kind,
    amount: `${box.amount.quantity} ${unit(box.amount.unit)}`,
    left: `${kilograms(box.leftKg)} kg`,
    place: box.place ?? 'not recorded',
    state:
      [
        ...(box.rejected ? ['rejected by itself'] : []),
        ...box.holds,
        ...(box.openedAt === null ? [] : ['opened']),
      ].join('; ') || 'as its lot',
  }));

const wordMadeOf = ({ composition }: LotFacts): LotReportView['madeOf'] =>
  composition.map(({ code, supplierLot, material, role, fraction }) => ({
    lot: code ?? 'remainder',
    supplierLot: supplierLot ?? (code === null ? 'lots under one part in a thousand million' : 'no supplier’s lot'),
    material: material ?? 'not told apart',
    role,
    share: percent(fraction),
  }));

const wordBalance = ({ balance }: LotFacts): Pick<LotReportView, 'balance' | 'balanced'> => {
  const rows: readonly (readonly [string, number])[] = [
    ['Received or made', balance.receivedKg],
    ['Used on parts and molds', balance.usedKg],
    ['Put into other lots', balance.putIntoKg],
    ['Lost: scrapped, purged, spilled, samples, sent back', balance.lostKg],
    ['Counts found more (or less, with a minus) than the book', balance.differenceKg],
    ['Left by the book', balance.leftKg],
  ];
  const allowed =
    balance.lossAllowance === null
      ? ''
      : ` Loss allowed without question: ${decimal(balance.lossAllowance * 100, 2)} %.`;
  return {
    balance: rows.map(([what, kg]) => [what, signed(kg)] as const),
    balanced: `${sentence(balance.verdict)}. The weakest basis of any line: ${balance.basis}.${allowed}`,
  };
};

const signed = (kg: number): string => (kg < 0 ? `−${kilograms(-kg)}` : kilograms(kg));
