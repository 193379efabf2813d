import { standing } from '../facts/standing.js';

/** Kinds of defect that ask at once for hardness and for the bucket or gun (common practice: both are faults of cure). */
const OF_CURE = "('catalyst-slug', 'undercure')";

const HARDNESS_READ = (d: string): string => `exists (
  select from fact.reading asked
  join fact.layer_record of_layer on of_layer.root = asked.of_id and of_layer.part_id = ${d}.part_id and ${standing('of_layer')}
  where asked.what = 'Barcol hardness' and asked.happened_at >= ${d}.happened_at and ${standing('asked')}
    and (${d}.schedule_layer_id is null or of_layer.schedule_layer_id = ${d}.schedule_layer_id))`;

const NAMED = (d: string): string =>
  `exists (select from fact.ask_answer answer where answer.defect_id = ${d}.root and ${standing('answer')})`;

/** SQL: what a defect still asks for, as a list: Barcol hardness there, the bucket or gun. Empty for other kinds. */
export const asksOf = (d: string): string => `case when ${d}.kind in ${OF_CURE} then array_remove(array[
  case when ${HARDNESS_READ(d)} then null else 'Barcol hardness' end, case when ${NAMED(d)} then null else 'bucket or gun' end], null)
  else array[]::text[] end`;
