import type { HoldingHullView, LotReportView } from '@hull-record/paper';
import type { ReachRow } from '../../../platform/reach/ask-reach.js';
import type { PlantTime } from '../../../platform/papers/plant-time.js';
import { percent } from '../../word-used.js';
import { amount, inline, kilograms } from '../../word-values.js';
import { sentence } from '../../../platform/papers/word-paper.js';
import type { LotFacts } from './lot-facts.js';

/** Unidentified lots that are named before the others are only counted. */
const NAMED = 12;

/** Where a lot went: hulls that hold it, those that possibly do, and lots made of it. */
export const wordReach = (facts: LotFacts, time: PlantTime): Pick<LotReportView, 'hulls' | 'possibly' | 'lotsMade'> => {
  const possible = facts.reach.filter(({ possibly }) => possibly);
  return {
    hulls: facts.reach.filter(({ possibly }) => !possibly).map((row) => wordHull(row, time)),
    possibly:
      possible.length === 0 ? null : { why: whyPossibly(facts), hulls: possible.map((row) => wordHull(row, time)) },
    lotsMade: facts.lotsMade.map(({ code, origin, basis, happened_at, ...row }) => ({
      ...{ lot: code, origin: MADE[origin] ?? origin, amount: inline(amount(row)), basis, when: time.at(happened_at) },
    })),
  };
};

const MADE: Readonly<Record<string, string>> = { mixed: 'bucket', tank: 'tank fill', cut: 'kit' };

const whyPossibly = ({ unidentified }: LotFacts): string => {
  const named = unidentified.slice(0, NAMED).map(({ code }) => code);
  const more = unidentified.length > NAMED ? ` and ${unidentified.length - NAMED} more` : '';
  const which = named.length === 0 ? '' : ` (${named.join(', ')}${more})`;
  return `They hold material that nobody could name when it was used${which}; this lot is among those that it may be of. They are listed until it is identified.`;
};

const wordHull = (row: ReachRow, time: PlantTime): HoldingHullView => ({
  hull: row.hull ?? `part ${row.parts[0]?.part ?? ''}, in no hull`,
  hin: row.hin,
  kg: row.kg === null ? (row.trace ? 'trace, under 1e-9' : 'not known') : `${kilograms(row.kg)} kg`,
  shareOfHull: row.shareOfHull === null ? 'none told' : percent(row.shareOfHull),
  largestShare: row.largestLayerShare === null ? 'none told' : percent(row.largestLayerShare),
  basis: row.basis ?? 'none told',
  now: nowOf(row, time),
  places: row.parts.flatMap(({ part, places }) =>
    places.map((place) => ({
      part,
      place: place.kind === 'joint' ? 'joint' : `${place.kind} ${place.place}`,
      role: place.role,
      kg: `${kilograms(place.kg)} kg`,
      share: percent(place.share),
      basis: place.basis,
      when: time.span(new Date(place.firstAt), new Date(place.lastAt)),
    })),
  ),
});

const nowOf = ({ now, hull }: ReachRow, time: PlantTime): string => {
  if (now === null) return hull === null ? 'in no hull' : 'in the plant';
  const where = now.dealer === null ? '' : `, ${now.dealer}`;
  return `${sentence(now.what)}${where}, since ${time.at(new Date(now.since))}`;
};
