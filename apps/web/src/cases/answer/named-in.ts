const BEFORE = 'have no claim: ';
const AFTER = '. Claims found so are prompted.';

/** The hulls that a sentence says are worth a look: those that hold much of the suspect and have no claim. */
export const hullsToInspect = (sentences: readonly string[]): readonly string[] =>
  sentences.flatMap((sentence) => {
    const from = sentence.indexOf(BEFORE);
    const to = sentence.lastIndexOf(AFTER);
    return from < 0 || to < from ? [] : sentence.slice(from + BEFORE.length, to).split(', ');
  });
