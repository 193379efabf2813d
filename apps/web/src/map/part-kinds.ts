import type { ModelView } from '@hull-record/contracts';

/** A kind of part that a model may give a skin for. */
export type PartKindName = keyof ModelView['skins'];

/** The kinds of part that a model gives a skin for. */
export const partKindsOf = ({ skins }: ModelView): readonly PartKindName[] => Object.keys(skins) as PartKindName[];
