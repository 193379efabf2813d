import ts from 'typescript';
import { nodesBelow, webSources } from './sources.js';

/** The names of texts that the web app says, and the beginnings of those it puts together, such as `hatch.`. */
export const textKeysUsed = (): { readonly keys: ReadonlySet<string>; readonly starts: readonly string[] } => {
  const nodes = webSources().flatMap(nodesBelow);
  const keys = nodes.filter(ts.isStringLiteralLike).map(({ text }) => text);
  const starts = nodes.filter(ts.isTemplateExpression).map(({ head }) => head.text);
  return {
    keys: new Set(keys),
    starts: [...new Set(starts)].filter((start) => /^[a-z]+\.([a-zA-Z]+\.)*$/.test(start)),
  };
};
