/** What material went into: a layer by its code, a repair by its mark; a part has one joint, which needs no name. */
export const placeName = (kind: string, name: string, term: (word: string) => string): string => {
  if (kind === 'layer') return name;
  return kind === name ? term(kind) : `${term(kind)} ${name}`;
};
