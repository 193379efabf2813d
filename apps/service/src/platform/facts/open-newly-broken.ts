import type { Fact } from './fact.js';
import { standing } from './standing.js';

/** What a broken rule is about. */
export interface About {
  readonly aboutKind: string;
  readonly aboutId: string;
  readonly partId: string | null;
}

interface Broken extends About {
  readonly rule: string;
  readonly detail: string;
}

/**
 * Opens a nonconformity for each broken rule that none is open for in the same words: a correction brings to light what
 * was not known, and does not ask twice about what was.
 */
export const openNewlyBroken = async (fact: Fact, broken: readonly Broken[]): Promise<void> => {
  if (broken.length === 0) return;
  const known = await fact.tx.query<{ about: string; rule: string; detail: string }[]>(
    `select c.about_id as about, c.rule, c.detail from fact.nonconformity c where c.about_id = any($1) and ${standing('c')}`,
    [[...new Set(broken.map(({ aboutId }) => aboutId))]],
  );
  const key = (about: string, rule: string, detail: string): string => JSON.stringify([about, rule, detail]);
  const said = new Set(known.map(({ about, rule, detail }) => key(about, rule, detail)));
  for (const { rule, detail, ...about } of broken) {
    const words = key(about.aboutId, rule, detail);
    if (said.has(words)) continue;
    said.add(words);
    await fact.open({ rule, detail, ...about });
  }
};

/** The same, of one thing. */
export const openNewlyBrokenAbout = (
  fact: Fact,
  broken: readonly { readonly rule: string; readonly detail: string }[],
  about: About,
): Promise<void> =>
  openNewlyBroken(
    fact,
    broken.map((rule) => ({ ...rule, ...about })),
  );
