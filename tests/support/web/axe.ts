import axe from 'axe-core';
import type { Page } from 'playwright-core';

interface Findings {
  readonly violations: readonly {
    readonly id: string;
    readonly help: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}

/**
 * What the accessibility checker finds on a page, each rule with the elements it is about.
 *
 * It is evaluated in the page and not loaded by it, which the security policy would forbid.
 */
export const axeFindings = async (page: Page): Promise<readonly string[]> => {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate<Findings>('axe.run(document, { resultTypes: ["violations"] })');
  return violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ html }) => html).join(' ')}`).sort();
};
