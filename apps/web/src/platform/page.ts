import { h, type Child } from './dom.js';

/** One page: its name in the window's title, and what is on it. The first h1 is where reading begins. */
export interface Page {
  readonly title: string;
  readonly content: readonly Child[];
}

/** The heading of a page, with the kind of thing above its name. Codes are set in figures of one width. */
export const heading = (name: string, kind?: string): HTMLElement =>
  h(
    'h1',
    { tabindex: -1 },
    kind === undefined ? null : h('small', {}, kind, ' '),
    h('span', { class: kind === undefined ? undefined : 'n', id: 'name' }, name),
  );

/** A part of a page under a heading of its own. */
export const section = (name: string, ...content: readonly Child[]): HTMLElement =>
  h('section', { 'aria-label': name }, h('h2', {}, name), ...content);

/** What to say where there is nothing, with what to do first. */
export const empty = (...content: readonly Child[]): HTMLElement => h('p', { class: 'empty' }, ...content);

/** Names and values, each name above its value; values that are null are left out. */
export const facts = (rows: readonly (readonly [name: string, value: Child])[]): HTMLElement =>
  h(
    'dl',
    { class: 'facts' },
    rows
      .filter(([, value]) => value !== null)
      .map(([name, value]) => h('div', {}, h('dt', {}, name), h('dd', {}, value))),
  );

export const link = (href: string, ...content: readonly Child[]): HTMLAnchorElement => h('a', { href }, ...content);
