import type { EntryField } from '../entry-field.js';

/** A JSON pointer with every index as a star: the field that it is, of whichever row. */
export const shapeOf = (pointer: string): string => pointer.replaceAll(/\/\d+(?=\/|$)/g, '/*');

/**
 * Everything in a draft that the service may point to, each as a field with its pointer (RFC 6901) as its name.
 *
 * @param labelOf the words for a pointer; undefined where the draft keeps what is not sent
 */
export const nodesOf = (draft: unknown, labelOf: (pointer: string) => string | undefined): readonly EntryField[] =>
  pointersIn(draft, '').flatMap((pointer) => {
    const label = labelOf(pointer);
    return label === undefined ? [] : [{ name: pointer, label, pointer }];
  });

const pointersIn = (of: unknown, at: string): readonly string[] => {
  const below = typeof of === 'object' && of !== null ? Object.entries(of) : [];
  const own = at === '' ? [] : [at];
  return [
    ...own,
    ...below.flatMap(([key, value]) => pointersIn(value, `${at}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`)),
  ];
};
