import { canonical } from '../facts/digest.js';
import { CorrectionEntity } from '../facts/correction.entity.js';
import type { Fact } from '../facts/fact.js';
import { openNewlyBrokenAbout, type About } from '../facts/open-newly-broken.js';
import { standing } from '../facts/standing.js';
import { childId } from '../ids.js';
import { VerdictEntity } from './verdict.entity.js';

/**
 * Waits until nobody else judges the same, to the end of the transaction: of two who change a part at once, the second
 * judges what the first left. Taken before what is judged is loaded; several in the order of their ids.
 */
export const judgeAlone = async (fact: Fact, topic: string, id: string): Promise<void> => {
  await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 6))', [`${topic}/${id}`]);
};

/** What was found about one topic. */
export interface Found extends Pick<VerdictEntity, 'topic' | 'verdict' | 'detail' | 'figures' | 'rule' | 'source'> {
  /** The rule that is broken, as nonconformities name it; absent: nothing is held against it. */
  readonly breaks?: string;
}

type Kept = Omit<Found, 'breaks'> & { readonly id: string; readonly root: string };

const KEPT = `
  select v.id, v.root, v.topic, v.verdict, v.detail, v.figures, v.rule, v.source from fact.verdict v
  where v.about_id = $1 and v.topic = any($2) and ${standing('v')}`;

/**
 * Keeps what was found about something, one verdict a topic. What was found of a topic before, and differs, is corrected;
 * a topic on which nothing is found any more is withdrawn. What is broken, and was not known to be, is opened.
 *
 * @param topics those that were judged, whether something was found or not
 * @param following broken rules that hold only as long as they are found: what is said of them in other words, and nobody
 *   decided on, is withdrawn
 */
export const keepVerdicts = async (
  fact: Fact,
  about: About,
  topics: readonly string[],
  found: readonly Found[],
  following: readonly string[] = [],
): Promise<void> => {
  const isNew = fact.rows.some(({ id }) => id === about.aboutId);
  const kept = isNew ? [] : await fact.tx.query<Kept[]>(KEPT, [about.aboutId, topics]);
  for (const topic of topics) {
    const before = kept.find((each) => each.topic === topic);
    const after = found.find((each) => each.topic === topic);
    if (before && after && same(before, after)) continue;
    const id = childId(fact.id, `verdict/${about.aboutId}/${topic}`);
    if (before) await correct(fact, before.id, after ? id : null);
    if (!after) continue;
    const { breaks: _breaks, ...values } = after;
    await fact.insert(VerdictEntity, { id, root: before?.root ?? id, ...about, ...values });
  }
  const broken = found.flatMap(({ breaks, detail }) => (breaks === undefined ? [] : [{ rule: breaks, detail }]));
  if (following.length > 0 && !isNew) await withdrawOthers(fact, about, following, broken);
  await openNewlyBrokenAbout(fact, broken, about);
};

const SAID = `
  select c.id, c.rule, c.detail from fact.nonconformity c
  where c.about_id = $1 and c.rule = any($2) and ${standing('c')}
    and not exists (select from fact.disposition o where o.of_id = c.root and ${standing('o')})
  order by c.id`;

const withdrawOthers = async (
  fact: Fact,
  about: About,
  rules: readonly string[],
  broken: readonly { readonly rule: string; readonly detail: string }[],
): Promise<void> => {
  const said = await fact.tx.query<{ id: string; rule: string; detail: string }[]>(SAID, [about.aboutId, rules]);
  for (const { id, rule, detail } of said)
    if (!broken.some((still) => still.rule === rule && still.detail === detail))
      await correct(fact, id, null, 'nonconformity');
};

const same = ({ id: _id, root: _root, ...before }: Kept, { breaks: _breaks, ...after }: Found): boolean =>
  canonical(before) === canonical(after);

const correct = (
  fact: Fact,
  corrects: string,
  replacement: string | null,
  correctsTable = 'verdict',
): Promise<string> =>
  fact.insert(CorrectionEntity, {
    id: childId(fact.id, `judged again/${corrects}`),
    ...{ corrects, correctsTable, replacement },
    reason: 'Judged again, by what is known now.',
  });
