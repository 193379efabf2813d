/** What stands between commas, semicolons or spaces. */
export const listed = (typed: string): string[] => typed.split(/[\s,;]+/).filter((each) => each !== '');
