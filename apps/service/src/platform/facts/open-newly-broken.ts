import type { Fact } from './fact.js';
import { standing } from './standing.js';

interface About {
  readonly aboutKind: string;
  readonly aboutId: string;
  readonly partId: string | null;
}

/**
 * Opens a nonconformity for each broken rule that none is open for in the same words: a correction brings to light what
 * was not known, and does not ask twice about what was.
 */
export const openNewlyBroken = async (
  fact: Fact,
  broken: readonly { readonly rule: string; readonly detail: string }[],
  about: About,
): Promise<void> => {
  const known = await fact.tx.query<{ rule: string; detail: string }[]>(
    `select c.rule, c.detail from fact.nonconformity c where c.about_id = $1 and ${standing('c')}`,
    [about.aboutId],
  );
  for (const { rule, detail } of broken) {
    if (known.some((each) => each.rule === rule && each.detail === detail)) continue;
    await fact.open({ rule, detail, ...about });
  }
};
