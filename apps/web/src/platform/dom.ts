/** What may stand inside an element. Text always becomes a text node: data is never read as markup. */
export type Child = Node | string | null | readonly Child[];

/** Attributes by name; `undefined` and `false` leave one out, `true` sets it without a value. */
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

const SVG = 'http://www.w3.org/2000/svg';

/** Makes an HTML element. */
export const h = <K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] => fill(document.createElement(name), attributes, children);

/** Makes an SVG element. Drawings take their colours from classes: the security policy allows no style attribute. */
export const s = <K extends keyof SVGElementTagNameMap>(
  name: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[K] => fill(document.createElementNS(SVG, name), attributes, children);

/** The nodes of children, nested lists laid flat and nothing left out but null. */
export const nodesOf = (children: readonly Child[]): readonly (Node | string)[] =>
  children.flatMap((child) => {
    if (child === null) return [];
    return typeof child === 'string' || child instanceof Node ? [child] : nodesOf(child);
  });

/** Children with a separator between each two. */
export const joined = (children: readonly Child[], separator: string): Child =>
  children.map((child, i) => (i === 0 ? child : [separator, child]));

const fill = <E extends Element>(element: E, attributes: Attributes, children: readonly Child[]): E => {
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) element.setAttribute(name, value === true ? '' : String(value));
  }
  element.append(...nodesOf(children));
  return element;
};
