import { DEFECT_KINDS } from '@hull-record/trade';

/**
 * The codes of kinds of defect that were typed between semicolons: by code, or by the name that a language has for it.
 * What is no kind goes on as it was typed, so that the service says so.
 */
export const kindsTyped = (typed: string, kind: (code: string) => string): string[] =>
  typed
    .split(';')
    .map((each) => each.trim())
    .filter((each) => each !== '')
    .map((each) => {
      const same = (name: string): boolean => name.toLowerCase() === each.toLowerCase();
      return DEFECT_KINDS.find(({ code }) => same(code) || same(kind(code)))?.code ?? each;
    });
