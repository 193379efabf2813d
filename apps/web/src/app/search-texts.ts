/** Reads the query of an address: the named values that are text and not empty; any other is left out. */
export const texts =
  <const Name extends string>(...names: readonly Name[]) =>
  (search: Readonly<Record<string, unknown>>): Partial<Record<Name, string>> =>
    Object.fromEntries(
      names.flatMap((name) => {
        const value = search[name];
        return typeof value === 'string' && value !== '' ? [[name, value]] : [];
      }),
    ) as Partial<Record<Name, string>>;

/** The values in a query, each as text: a hull number of digits alone stays what was typed. */
export const parseQuery = (query: string): Record<string, string> => Object.fromEntries(new URLSearchParams(query));

/** A query with the values that are not empty. */
export const writeQuery = (values: Readonly<Record<string, unknown>>): string => {
  const given = Object.entries(values).flatMap<[string, string]>(([name, value]) =>
    typeof value === 'string' && value !== '' ? [[name, value]] : [],
  );
  return given.length === 0 ? '' : `?${new URLSearchParams(given).toString()}`;
};
