import type { FlawLimitsView, ReportDefect } from '@hull-record/contracts';
import {
  checkPlace,
  isDefectKind,
  judgeFlaw,
  type FlawRow,
  type FlawVerdict,
  type Place,
  type Skin,
} from '@hull-record/trade';
import { typedNumber } from '../../words/typed-number.js';
import type { PostBody } from '../../api/contract.js';
import type { OfEnvelope } from '../../outbox/entry.js';

/** What the outbox is given of a defect: it puts the envelope to it. */
type Body = Omit<PostBody<'/api/parts/:part/defects'>, keyof OfEnvelope>;

/** A defect as it is being entered; figures as typed. */
export interface Draft {
  readonly place: Place | undefined;
  readonly kind: string;
  /** Code of the layer; empty when it is not known. */
  readonly layer: string;
  readonly long: string;
  readonly wide: string;
  readonly deep: string;
  /** ASTM D714: size of the largest, and how many; empty when it was not graded. */
  readonly d714: string;
  readonly frequency: string;
  readonly counted: string;
  readonly area: string;
  readonly note: string;
}

export const EMPTY: Draft = {
  ...{ place: undefined, kind: '', layer: '', long: '', wide: '', deep: '' },
  ...{ d714: '', frequency: '', counted: '', area: '', note: '' },
};

const FIGURES = ['long', 'wide', 'deep', 'counted', 'area'] as const;

/** What stands in the way of saving, each the end of a key of the texts. */
export type Missing = 'place' | 'kind' | 'grade' | 'figure' | 'area';

/** Whether a figure is none that the record takes: no number, or nothing. */
export const isNoFigure = (typed: string): boolean => {
  const value = typedNumber(typed);
  return value !== undefined && !(value > 0);
};

export const missingIn = (draft: Draft, skin: Skin | undefined): readonly Missing[] => {
  const { place, kind, d714, frequency, counted, area } = draft;
  const placed = place !== undefined && (skin === undefined || checkPlace(place, skin).length === 0);
  const blistered = kind === 'blister';
  return [
    ...(placed ? [] : ['place' as const]),
    ...(kind === '' ? ['kind' as const] : []),
    ...(blistered && d714 !== '' && d714 !== '10' && frequency === '' ? ['grade' as const] : []),
    ...(FIGURES.some((name) => isNoFigure(draft[name])) ? ['figure' as const] : []),
    ...(blistered && (counted === '') !== (area === '') ? ['area' as const] : []),
  ];
};

/** The grade as the record writes it, such as 6M; undefined when there is none. */
const gradeOf = ({ kind, d714, frequency }: Draft): string | undefined =>
  kind !== 'blister' || d714 === '' ? undefined : d714 === '10' ? d714 : `${d714}${frequency}`;

/** The defect as it is recorded. Asks that nothing is missing. */
export const bodyOf = (draft: Draft & { readonly place: Place }): Body => {
  const { place, kind, layer, long, wide, deep, counted, area, note } = draft;
  const blistered = kind === 'blister';
  return {
    ...{ place, kind, layer: layer || undefined, grade: gradeOf(draft), note: note.trim() || undefined },
    ...{ lengthMm: typedNumber(long), widthMm: typedNumber(wide), depthMm: typedNumber(deep) },
    ...(blistered ? { counted: typedNumber(counted), countedAreaM2: typedNumber(area) } : {}),
  } satisfies Partial<ReportDefect>;
};

/** What the acceptance table of the plant says of it at once: by the rule that the service judges it by. */
export const judgeDraft = (draft: Draft, { level, rows }: FlawLimitsView): FlawVerdict | null => {
  const { kind, long, wide, counted, area } = draft;
  if (level === null || !isDefectKind(kind)) return null;
  const found = typedNumber(counted);
  const areaM2 = typedNumber(area);
  const count = found === undefined || areaM2 === undefined ? {} : { count: { found, areaMm2: areaM2 * 1e6 } };
  return judgeFlaw({ kind, size: largestMm(long, wide), unit: 'mm', ...count }, level, rows as readonly FlawRow[]);
};

/** The larger of two sizes as typed, mm; NaN when neither is a size. */
export const largestMm = (...typed: readonly string[]): number => {
  const sizes = typed.map(typedNumber).filter((size): size is number => size !== undefined && size > 0);
  return sizes.length === 0 ? Number.NaN : Math.max(...sizes);
};
