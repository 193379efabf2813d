import type { OwnRepairs, ReportOwnRepair } from '@hull-record/contracts';
import type { Place } from '@hull-record/trade';
import { decimal, given, type Said } from '../entry/entry-field.js';

/** The name of the tick of an open defect. */
export const tickOf = (defect: string): string => `defect ${defect}`;

export const GRIND_OUT = ['lengthMm', 'widthMm', 'depthMm'] as const;
export const STRUCTURE = ['originalMm', 'damageDepthMm', 'taperMm', 'patchMm'] as const;

type Body = Omit<ReportOwnRepair, 'id' | 'enteredBy' | 'device' | 'happenedAt'>;

/**
 * An outside repair as it was typed, as it is sent. What is no number is sent as none, for the service to point at.
 *
 * @param place of what is not among the open defects; undefined when nothing was placed
 */
export const repairOf = (
  said: Said,
  part: string,
  openDefects: OwnRepairs['openDefects'],
  place: Place | undefined,
): Body => ({
  part,
  defects: openDefects.filter(({ id }) => said(tickOf(id)) === 'yes').map(({ id }) => id),
  spots: spotOf(said('spotKind'), place),
  procedure: said('procedure'),
  plies: said('plies')
    .split('\n')
    .map((ply) => ply.trim())
    .filter((ply) => ply !== ''),
  outside: {
    ...{ at: said('at'), toldBy: said('toldBy'), doneOn: said('doneOn') },
    ...given('material', said('material')),
    ...given('evidence', said('evidence')),
  },
  ...given('note', said('note')),
  ...(said('taperRatio').trim() === '' ? {} : { taperRatio: numberOf(said('taperRatio')) }),
  ...measured('grindOutMm', GRIND_OUT, said),
  ...measured('geometry', STRUCTURE, said),
});

/** A spot that has a kind and no place is sent as it is: the service asks for the place, and nothing is left out silently. */
const spotOf = (kind: string, place: Place | undefined): Body['spots'] =>
  kind === '' && place === undefined ? [] : [{ kind, place } as Body['spots'][number]];

const numberOf = (typed: string): number => Number(decimal(typed));

/** Figures that go together: left out when none is typed; with some of them, the service says which is missing. */
const measured = <F extends string, N extends string>(field: F, names: readonly N[], said: Said) => {
  const typed = names.filter((name) => said(name).trim() !== '');
  if (typed.length === 0) return {};
  const figures = Object.fromEntries(typed.map((name) => [name, numberOf(said(name))])) as Record<N, number>;
  return { [field]: figures } as Record<F, Record<N, number>>;
};
