/** The hull numbers in a text, each once: they may be parted by commas, semicolons or lines. */
export const numbersIn = (text: string): readonly string[] => [
  ...new Set(
    text
      .split(/[,;\n]/)
      .map((each) => each.trim())
      .filter(Boolean),
  ),
];
