/** The names in braces and in tags of a message: `{lot} of <link>all</link>` has `lot` and `link`. */
export type NamesIn<S extends string> = Braced<S> | Tagged<S>;

type Braced<S extends string> = S extends `${string}{${infer Rest}` ? FirstName<Rest> | Braced<Rest> : never;
type Tagged<S extends string> = S extends `${string}<${infer Name}>${infer Rest}`
  ? Opening<Name> | Tagged<Rest>
  : never;
type Opening<Name extends string> = Name extends `/${string}` ? never : Name;
/** What stands before a comma or a closing brace; a branch of a plural has a space or a # there, a name has neither. */
type FirstName<S extends string> = S extends `${infer Name}}${string}` ? Plain<BeforeComma<Name>> : never;
type BeforeComma<S extends string> = S extends `${infer Name},${string}` ? Name : S;
type Plain<S extends string> = S extends `${string} ${string}` | `#${string}` | '' ? never : S;

/** What a message has to be given: nothing, or a value for each of its names. */
export type ValuesOf<S extends string, Value> = [NamesIn<S>] extends [never]
  ? []
  : [values: Readonly<Record<NamesIn<S>, Value>>];
