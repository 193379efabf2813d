import { h, type Child } from './dom.js';

/** A list whose first items show; the others unfold, so that a long list does not bury what stands below it. */
export const folded = (items: readonly Child[], atMost: number, many: string): Child => {
  const list = (some: readonly Child[]): HTMLElement =>
    h(
      'ul',
      { class: 'plain' },
      some.map((item) => h('li', {}, item)),
    );
  // Unfolding a single one would take as much room as showing it.
  if (items.length <= atMost + 1) return list(items);
  const rest = items.slice(atMost);
  return [list(items.slice(0, atMost)), h('details', {}, h('summary', {}, `${rest.length} more ${many}`), list(rest))];
};
