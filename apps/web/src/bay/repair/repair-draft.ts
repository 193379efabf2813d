import type { DefectView, PartView, TakeReadings } from '@hull-record/contracts';
import type { BodyOf } from '../../outbox/queue-entry.js';
import { typedDecimal, typedNumber } from '../../words/typed-number.js';
import { badgesIn } from '../badges.js';
import type { TakenRow } from '../materials/taken-row.js';
import { takenOf } from '../materials/taken-row.js';
import { cutOf, openingOf, orderOf, type Cut, type From, type Order, type Plan } from './order.js';

/** A repair as it is planned and recorded; figures as typed, empty where what the record tells is taken. */
export interface RepairDraft {
  readonly chosen: readonly string[];
  readonly from: From;
  readonly ratio: string;
  readonly sides: Plan['sides'];
  readonly long: string;
  readonly wide: string;
  readonly depth: string;
  readonly original: string;
  /** Thickness of the patch as it was laid up, mm. */
  readonly patch: string;
  readonly procedure: string | null;
  readonly used: readonly TakenRow[];
  /** Badges of all who did it. */
  readonly doneBy: string;
  readonly barcol: string;
  readonly impressor: string;
  readonly photos: readonly File[];
}

export const emptyRepair = (chosen: readonly string[], badge: string): RepairDraft => ({
  ...{ chosen, from: 'outside', ratio: '12', sides: 'one', long: '', wide: '', depth: '', original: '', patch: '' },
  ...{ procedure: null, used: [], doneBy: badge, barcol: '', impressor: '', photos: [] },
});

/** What a draft comes to: the laminate that is cut, the plan with what the record tells filled in, and the order. */
export interface WorkedOut {
  readonly defects: readonly DefectView[];
  readonly cut: Cut;
  readonly plan: Plan;
  readonly order: Order | null;
}

const tenths = (mm: number): number => Math.round(mm * 10) / 10;
const orElse = (typed: string, known: number | undefined): number => typedNumber(typed) ?? known ?? Number.NaN;

export const workOut = (part: PartView, draft: RepairDraft): WorkedOut => {
  const defects = part.defects.filter(({ id }) => draft.chosen.includes(id));
  const cut = deepest(part, defects, draft.from);
  const opening = openingOf(defects);
  const plan: Plan = {
    lengthMm: orElse(draft.long, opening.lengthMm),
    widthMm: orElse(draft.wide, opening.widthMm),
    depthMm: orElse(draft.depth, tenths(cut.cutMm) || undefined),
    originalMm: orElse(draft.original, tenths(cut.wholeMm) || undefined),
    ratio: orElse(draft.ratio, undefined),
    sides: draft.sides,
  };
  return { defects, cut, plan, order: orderOf(plan, cut.plies) };
};

/** Of several defects the one that is reached last decides how deep it is ground. */
const deepest = (part: PartView, defects: readonly DefectView[], from: From): Cut =>
  defects
    .map(({ layer }) => cutOf(part, layer, from))
    .reduce((a, b) => (b.layers.length > a.layers.length ? b : a), cutOf(part, defects[0]?.layer ?? null, from));

export type MissingInRepair = 'defects' | 'plan' | 'maker' | 'used' | 'barcol' | 'depth';

export const missingInRepair = (draft: RepairDraft, { plan, order }: WorkedOut): readonly MissingInRepair[] => [
  ...(draft.chosen.length === 0 ? ['defects' as const] : []),
  ...(order === null ? ['plan' as const] : []),
  ...(plan.depthMm > plan.originalMm ? ['depth' as const] : []),
  ...(badgesIn(draft.doneBy).length === 0 ? ['maker' as const] : []),
  ...(draft.used.some((row) => takenOf(row) === null) ? ['used' as const] : []),
  ...(barcolOf(draft.barcol) === null ? ['barcol' as const] : []),
];

/** Readings typed in one line, spot by spot; null when one of them is no figure. */
export const barcolOf = (typed: string): readonly string[] | null => {
  const words = typed.split(/[\s;]+/).filter((word) => word !== '');
  const values = words.map(typedDecimal);
  return values.every((value): value is string => value !== undefined) ? values : null;
};

/** The repair as it is recorded. Asks that nothing is missing. */
export const repairBody = (
  draft: RepairDraft,
  { plan, order, cut, defects }: WorkedOut,
  procedure: string,
): BodyOf<'/api/parts/:part/repairs'> => {
  const taperMm = tenths(order?.taperMm ?? 0);
  const patchMm = tenths(typedNumber(draft.patch) ?? order?.patch?.thicknessMm ?? plan.depthMm);
  return {
    defects: defects.map(({ id }) => id),
    procedure,
    taperRatio: plan.ratio,
    grindOutMm: {
      lengthMm: tenths(order?.outerLengthMm ?? plan.lengthMm),
      widthMm: tenths(order?.outerWidthMm ?? plan.widthMm),
      depthMm: plan.depthMm,
    },
    geometry: {
      ...{ originalMm: plan.originalMm, damageDepthMm: plan.depthMm, taperMm, patchMm, sides: plan.sides },
    },
    plies: cut.plies.map(({ words, layer }) => `${words} (${layer})`),
    doneBy: badgesIn(draft.doneBy),
    used: draft.used.flatMap((row) => takenOf(row) ?? []),
  };
};

/** Barcol of the patch, spot by spot; null when none was read. */
export const readingsBody = ({ barcol, impressor }: RepairDraft): BodyOf<'/api/repairs/:repair/readings'> | null => {
  const values = barcolOf(barcol) ?? [];
  if (values.length === 0) return null;
  return {
    ...{ what: 'Barcol hardness', unit: 'Barcol', equipment: impressor.trim() || undefined },
    spots: values.map((value) => ({ value })),
  } satisfies Partial<TakeReadings>;
};
