import type { Recomputing } from '@hull-record/contracts';
import { h, type Child } from './dom.js';
import { recomputingNote } from './recomputing-note.js';
import { region, trouble } from './region.js';
import { rowOf, table, type Column } from './table.js';

interface PageOf<T> {
  readonly items: readonly T[];
  readonly next: string | null;
  /** Of a search whose figures are being worked out anew. */
  readonly recomputing?: Recomputing | null;
}

/** A list that comes a page at a time. */
export interface Paged<T> {
  /** What is listed, such as "hulls". */
  readonly what: string;
  readonly caption: string;
  readonly columns: readonly Column<T>[];
  readonly load: (cursor?: string) => Promise<PageOf<T>>;
  readonly empty: () => Child;
  readonly notThere?: () => Child;
  /** What the figures rest on, below the table. */
  readonly note?: string;
}

/** A table that shows its first page, and more of it when asked. */
export const pagedTable = <T>(list: Paged<T>): HTMLElement =>
  region({
    what: list.what,
    load: () => list.load(),
    show: (page) => (page.items.length === 0 ? list.empty() : showPage(list, page)),
    ...(list.notThere ? { notThere: list.notThere } : {}),
  });

const showPage = <T>(list: Paged<T>, page: PageOf<T>): Child => {
  const shown = table(list.caption, list.columns, page.items);
  const count = h('p', { class: 'note soft', role: 'status' });
  const more = h('button', { type: 'button', class: 'btn' }, `Show more ${list.what}`);
  const below = h('div', { class: 'more' }, count, more);
  let next = page.next;
  const tell = (): void => {
    const rows = shown.tBodies[0]?.rows.length ?? 0;
    count.textContent =
      next === null ? `All ${list.what}: ${rows}.` : `The first ${rows} ${list.what}. There are more.`;
    more.hidden = next === null;
  };
  const add = async (): Promise<void> => {
    more.disabled = true;
    below.querySelector('.trouble')?.remove();
    try {
      const following = await list.load(next ?? undefined);
      next = following.next;
      shown.tBodies[0]?.append(...following.items.map((item) => rowOf(list.columns, item)));
      tell();
    } catch (error) {
      below.append(trouble(`more ${list.what}`, error, () => void add()));
    } finally {
      more.disabled = false;
    }
  };
  more.addEventListener('click', () => void add());
  tell();
  return [
    recomputingNote(page.recomputing),
    shown,
    below,
    list.note === undefined ? null : h('p', { class: 'note soft' }, list.note),
  ];
};
