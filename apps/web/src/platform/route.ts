/** Where the reader is: `#/hulls/86-1?x=y` is the path `hulls`, `86-1` and the query x=y. */
export interface Route {
  readonly path: readonly string[];
  readonly query: URLSearchParams;
}

/** Reads the part of an address after the #. A wrongly escaped address is a path of its own that no page answers to. */
export const readRoute = (hash: string): Route => {
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?', 2);
  try {
    return { path: path.split('/').filter(Boolean).map(decodeURIComponent), query: new URLSearchParams(query) };
  } catch {
    return { path: ['?'], query: new URLSearchParams() };
  }
};

/** The address of a page; query values that are empty are left out. */
export const hrefOf = (path: readonly string[], query: Readonly<Record<string, string>> = {}): string => {
  const given = Object.entries(query).filter(([, value]) => value !== '');
  const tail = given.length === 0 ? '' : `?${new URLSearchParams(given).toString()}`;
  return `#/${path.map(encodeURIComponent).join('/')}${tail}`;
};

/** Puts what the reader chose into the address, so that it can be kept and sent, without leaving the page. */
export const keepInAddress = (path: readonly string[], query: Readonly<Record<string, string>>): void =>
  history.replaceState(null, '', hrefOf(path, query));
