import type { CertificateContent, ChangedValue } from '@hull-record/contracts';

/** Where a value is printed, and what is printed there. */
export type PrintedValues = ReadonlyMap<string, string>;

/**
 * The values that a certificate prints of its hull, each under where it is printed: not its own number, day and signer.
 *
 * What was repaired goes by the mark before its colon, a concession by what it ends with.
 */
export const printedValues = (content: CertificateContent): PrintedValues => {
  const { hull, hin, model, released, parts, repaired, concessions, leftOut } = content;
  const found = new Map<string, string>([
    ['hull', hull],
    ['model', model],
    ['released', released],
  ]);
  if (hin !== null) found.set('HIN', hin);
  const add = (where: string, value: string): void => {
    const before = found.get(where);
    found.set(where, before === undefined ? value : `${before}; ${value}`);
  };
  for (const { part, kind, layers } of parts)
    for (const { name, materials, made, readings } of layers) {
      const layer = `${kind} ${part}, ${name}`;
      add(`${layer}, materials`, materials);
      add(`${layer}, made`, made);
      add(`${layer}, readings`, readings);
    }
  for (const line of repaired) add(`repair ${line.split(':')[0] ?? ''}`, line);
  for (const line of concessions) add(`concession ${/concession (.*)\.$/.exec(line)?.[1] ?? ''}`, line);
  if (leftOut.length > 0) found.set('what found no room', leftOut.join(' '));
  return found;
};

/** A certificate as it was issued, and its hull as drawn before a correction, right after it, and now. */
export interface Drawings {
  readonly issued: CertificateContent;
  readonly before: CertificateContent;
  readonly after: CertificateContent;
  readonly now: CertificateContent;
}

/**
 * The printed values that a correction changed, and that are not on record now as they are printed.
 *
 * What was recorded since the issue without correcting anything, such as another repair, changes nothing that is
 * printed; neither does a later version of this program that words something else.
 */
export const changedValues = ({ issued, before, after, now }: Drawings): readonly ChangedValue[] => {
  const [was, became, is] = [printedValues(before), printedValues(after), printedValues(now)];
  return [...printedValues(issued)].flatMap(([what, printed]) => {
    const here = is.get(what) ?? null;
    return was.get(what) === became.get(what) || here === printed ? [] : [{ what, printed, now: here }];
  });
};

/** How many lines a certificate had room for, from what is on it: so that the same is left out when it is drawn again. */
export const roomOf = ({ parts, repaired, concessions, leftOut }: CertificateContent, most: number): number => {
  const layers = parts.reduce((sum, part) => sum + part.layers.length, 0);
  if (leftOut.some((line) => line.includes('more layers'))) return layers;
  if (leftOut.length > 0) return 3 * Math.max(repaired.length, concessions.length) + 2;
  return Math.max(most, layers);
};
