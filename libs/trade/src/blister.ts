/** How many blisters, from few to dense: F, M (medium), MD (medium dense), D (ASTM D714 4.3). */
export const D714_FREQUENCIES = ['F', 'M', 'MD', 'D'] as const;
export type D714Frequency = (typeof D714_FREQUENCIES)[number];

const BLISTERED_SIZES = [8, 6, 4, 2] as const;

/**
 * A blister grade: 10 for none, or a size with a frequency.
 *
 * Size 8 is the smallest blister easily seen by the unaided eye, 6, 4 and 2 progressively larger (ASTM D714 4.2).
 * D714 is written for paints; for gel coat it serves as vocabulary.
 */
export type D714Grade =
  { readonly size: 10 } | { readonly size: (typeof BLISTERED_SIZES)[number]; readonly frequency: D714Frequency };

/** All seventeen grades, from none to the worst. */
export const D714_GRADES: readonly D714Grade[] = [
  { size: 10 },
  ...BLISTERED_SIZES.flatMap((size) => D714_FREQUENCIES.map((frequency) => ({ size, frequency }))),
];

/** Writes a grade as "10" or as size and frequency, such as "8F". */
export const formatD714 = (grade: D714Grade): string => (grade.size === 10 ? '10' : `${grade.size}${grade.frequency}`);

/** Reads a grade written exactly "10" or size and frequency such as "4MD"; anything else is undefined. */
export const parseD714 = (text: string): D714Grade | undefined =>
  D714_GRADES.find((grade) => formatD714(grade) === text);

/**
 * Orders two grades by severity: negative when the first is milder, positive when it is worse.
 *
 * The trap: a smaller size number is a larger blister, hence worse. Size goes before frequency; D714 itself ranks
 * within each only, so that 2F is worse than 8D is this record's convention.
 */
export const compareD714 = (a: D714Grade, b: D714Grade): number => rank(a) - rank(b);

const rank = (grade: D714Grade): number => D714_GRADES.findIndex((known) => formatD714(known) === formatD714(grade));
