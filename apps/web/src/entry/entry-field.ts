import type { FieldError } from '../api/problem.js';

/** A field of a record that is typed, ticked or chosen. */
export interface EntryField {
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly kind?: 'text' | 'words' | 'decimal' | 'lines' | 'choice' | 'day' | 'moment' | 'tick';
  readonly options?: readonly (readonly [value: string, words: string])[];
  /** What a choice says that is not made. */
  readonly none?: string;
  /** Where the service points to when it finds this field wrong (RFC 6901), or the beginning of it; else its name. */
  readonly pointer?: string;
}

/** Fields that belong together; a group without a name is the body of the form. */
export interface FieldGroup {
  readonly name?: string;
  readonly fields: readonly EntryField[];
}

/** What stands in a field; a tick is `yes` or nothing, and so is a field that is not there. */
export type Said = (name: string) => string;

/** What is wrong by field, and what is wrong with no field that is seen. */
export interface Wrong {
  readonly at: Readonly<Record<string, string>>;
  readonly elsewhere: readonly string[];
}

/** Puts what the service found wrong to the fields that it points to: the one that points deepest has it. */
export const wrongOf = (fields: readonly EntryField[], errors: readonly FieldError[]): Wrong => {
  const at: Record<string, string> = {};
  const elsewhere: string[] = [];
  for (const { pointer, detail } of errors) {
    const field = fields.filter((each) => isBelow(pointer, pointerOf(each))).sort(byDepth)[0];
    if (field === undefined) elsewhere.push(detail);
    else at[field.name] = at[field.name] === undefined ? detail : `${at[field.name]} ${detail}`;
  }
  return { at, elsewhere };
};

const pointerOf = ({ name, pointer }: EntryField): string => pointer ?? `/${name}`;
const isBelow = (pointer: string, start: string): boolean => pointer === start || pointer.startsWith(`${start}/`);
const byDepth = (a: EntryField, b: EntryField): number => pointerOf(b).length - pointerOf(a).length;

/** A decimal as the service takes it: a comma is the decimal mark of some languages, and thin spaces group digits. */
export const decimal = (typed: string): string =>
  typed
    .trim()
    .replaceAll(/[\s\u202f]/g, '')
    .replace(',', '.');

/** A field that may be left out: what was not typed is not sent. */
export const given = <K extends string>(name: K, typed: string): { readonly [N in K]?: string } =>
  (typed.trim() === '' ? {} : { [name]: typed.trim() }) as { [N in K]?: string };
