import type { HeldHullsView, HeldHullView } from '@hull-record/paper';
import type { HeldRow } from '../../../platform/holds/load-held-hulls.js';
import type { PlantTime } from '../../../platform/papers/plant-time.js';
import { sentence, wordPaper } from '../../../platform/papers/word-paper.js';
import type { HeldPaper, ScopeRow } from './load-held-paper.js';

/** Words the list of the hulls that a hold reaches. */
export const wordHeldHulls = (facts: HeldPaper): HeldHullsView => {
  const { hold, held, ended } = facts;
  const { paper, time } = wordPaper(facts.plant, facts.newest, facts.recomputing);
  const reached = held.rows.filter((row) => row.reached);
  const disposed = reached.filter((row) => row.disposed).length;
  return {
    ...paper,
    ...{ thing: facts.thing, kind: hold.kind, reason: hold.reason, placed: time.at(hold.happenedAt) },
    scopes:
      facts.scopes.length === 0 ? ['Everything that holds it.'] : facts.scopes.map((scope) => wordScope(scope, time)),
    ended:
      ended === null ? null : `${ended.closed ? 'closed' : 'lifted'} ${time.at(ended.happened_at)}: ${ended.reason}`,
    summary: `${reached.length} reached, ${disposed} disposed of, ${reached.length - disposed} open.${belowOf(facts)}`,
    complete: disposed === reached.length,
    reached: reached.map((row) => wordHull(row, time)),
    out: held.rows.filter((row) => !row.reached).map((row) => wordHull(row, time)),
  };
};

/** Hulls that it does not reach: of a hold that was never narrowed, those with a trace under the floor of composition. */
const belowOf = ({ held: { below }, scopes }: HeldPaper): string => {
  if (below === 0) return '';
  return ` ${below} more ${below === 1 ? 'holds' : 'hold'} ${scopes.length === 0 ? 'a trace alone, under 1e-9' : 'less than it reaches'}.`;
};

/** "12.5 %": a share with three digits that count, two of them under a tenth of a percent; "under 0.001 %". */
export const percent = (share: number): string => {
  if (share > 0 && share < 0.00001) return 'under 0.001\u00a0%';
  return `${Number((100 * share).toPrecision(share < 0.001 ? 2 : 3))}\u00a0%`;
};

const wordScope = (
  { min_share, zone, made_from, made_until, reason, happened_at }: ScopeRow,
  time: PlantTime,
): string => {
  const bounds = [
    ...(min_share === 0 ? [] : [`shares of ${percent(min_share)} and more`]),
    ...(zone === null ? [] : [`zone ${zone}`]),
    ...(made_from === null ? [] : [`made from ${time.at(made_from)}`]),
    ...(made_until === null ? [] : [`made until ${time.at(made_until)}`]),
  ];
  const words = sentence(bounds.length === 0 ? 'everything that holds it' : bounds.join(', '));
  return reason === null ? `${words}.` : `${words}, narrowed ${time.at(happened_at)}: ${reason}`;
};

const wordHull = (row: HeldRow, time: PlantTime): HeldHullView => ({
  hull: row.hull ?? `part ${row.part ?? ''}, in no hull`,
  ...{ hin: row.hin, model: row.modelName, disposed: row.disposed },
  share: wordShare(row),
  where: row.dealer === null ? row.state : `${row.state}, ${row.dealer}`,
  left: row.leftAt === null ? null : time.at(new Date(row.leftAt)),
  atHold: row.atHold === null ? 'came since' : row.atHold.state,
  said: row.said.map(
    ({ what, happenedAt, by, doneBy, note, evidence }) =>
      `${sentence(what)} ${time.at(new Date(happenedAt))}, ${doneBy.join(', ')}${doneBy.join() === by ? '' : `, entered by ${by}`}` +
      `${note === null ? '' : `: ${note}`}${evidence === null ? '' : ` (evidence: ${evidence})`}`,
  ),
});

/** The share as words, also for a spreadsheet. */
export const wordShare = ({ share, possibly }: Pick<HeldRow, 'share' | 'possibly'>): string => {
  if (possibly) return 'possibly there';
  return share === null ? 'no share' : percent(share);
};
