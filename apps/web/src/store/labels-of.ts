/**
 * Labels for more containers of a lot: its code with a number behind, going on from those that it has.
 *
 * @param count how many, at most 200; nothing for what is not a whole number of containers
 * @param have how many containers of the lot have a label
 */
export const labelsOf = (lot: string, count: number, have: number): readonly string[] =>
  Number.isInteger(count) && count >= 1 && count <= 200
    ? Array.from({ length: count }, (_, i) => `${lot}-${have + i + 1}`)
    : [];
