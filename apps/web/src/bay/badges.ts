/** The badges in a line that a person typed, by comma, space or semicolon; each once. */
export const badgesIn = (typed: string): string[] => [
  ...new Set(
    typed
      .split(/[\s,;]+/)
      .filter((badge) => badge !== '')
      .map((badge) => badge.toUpperCase()),
  ),
];
