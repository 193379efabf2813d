/** Letters of five by seven dots, row by row from the top, drawn here; as many as our words need. */
const LETTERS: Readonly<Record<string, string>> = {
  A: '01110 10001 10001 11111 10001 10001 10001',
  D: '11110 10001 10001 10001 10001 10001 11110',
  E: '11111 10000 10000 11110 10000 10000 11111',
  G: '01110 10001 10000 10111 10001 10001 01110',
  H: '10001 10001 10001 11111 10001 10001 10001',
  I: '01110 00100 00100 00100 00100 00100 01110',
  N: '10001 11001 10101 10101 10011 10001 10001',
  O: '01110 10001 10001 10001 10001 10001 01110',
  P: '11110 10001 10001 11110 10000 10000 10000',
  R: '11110 10001 10001 11110 10100 10010 10001',
  T: '11111 00100 00100 00100 00100 00100 00100',
  V: '10001 10001 10001 10001 10001 01010 00100',
  W: '10001 10001 10001 10101 10101 11011 10001',
  ' ': '00000 00000 00000 00000 00000 00000 00000',
};

/** Dots between the left edges of two letters. */
const ADVANCE = 6;

/** The dots of a text that are set, each by column and row; letters that are not there are left out. */
export const dotsOf = (text: string): readonly (readonly [column: number, row: number])[] =>
  [...text].flatMap((letter, nth) =>
    (LETTERS[letter] ?? '')
      .split(' ')
      .flatMap((dots, row) =>
        [...dots].flatMap((dot, column) => (dot === '1' ? [[nth * ADVANCE + column, row] as const] : [])),
      ),
  );
