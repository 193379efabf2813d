import type { ModelView } from '@hull-record/contracts';

/** A kind of part that is molded. */
export type PartKindName = keyof ModelView['skins'];

/** The kinds of part, the hull first. */
export const PART_KINDS = ['hull molding', 'deck', 'liner', 'stringer grid', 'hatch'] as const satisfies PartKindName[];

export const isPartKind = (words: string | undefined): words is PartKindName =>
  PART_KINDS.some((kind) => kind === words);

/** The versions of one kind of part, the newest first. */
export const versionsOf = ({ schedules }: ModelView, kind: string): readonly ModelView['schedules'][number][] =>
  schedules.filter(({ partKind }) => partKind === kind).sort((a, b) => b.version - a.version);
