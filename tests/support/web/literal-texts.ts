import ts from 'typescript';
import { nodesBelow } from './sources.js';

/** Attributes that are read out or shown. */
const SPOKEN = new Set([
  'label',
  'title',
  'alt',
  'placeholder',
  'aria-label',
  'caption',
  'name',
  'what',
  'hint',
  'none',
]);
const WORDS = /\p{L}{2}/u;

const isWords = (node: ts.Node): boolean =>
  ts.isTemplateExpression(node)
    ? [node.head, ...node.templateSpans.map(({ literal }) => literal)].some(({ text }) => WORDS.test(text))
    : ts.isStringLiteralLike(node) && WORDS.test(node.text);

/** The texts that an expression may become: not those it hands to a function, compares with or looks up by. */
const shown = (node: ts.Node): readonly ts.Node[] => {
  if (ts.isConditionalExpression(node)) return [...shown(node.whenTrue), ...shown(node.whenFalse)];
  if (ts.isParenthesizedExpression(node)) return shown(node.expression);
  if (ts.isBinaryExpression(node)) {
    const joins = [ts.SyntaxKind.PlusToken, ts.SyntaxKind.QuestionQuestionToken, ts.SyntaxKind.BarBarToken];
    return joins.includes(node.operatorToken.kind) ? [...shown(node.left), ...shown(node.right)] : [];
  }
  return isWords(node) ? [node] : [];
};

const inChild = (node: ts.Node): readonly ts.Node[] => {
  if (ts.isJsxText(node)) return WORDS.test(node.text) ? [node] : [];
  if (!ts.isJsxExpression(node) || node.expression === undefined) return [];
  if (!ts.isJsxAttribute(node.parent)) return shown(node.expression);
  return SPOKEN.has(node.parent.name.getText()) ? shown(node.expression) : [];
};

const inAttribute = (node: ts.Node): readonly ts.Node[] =>
  ts.isJsxAttribute(node) && SPOKEN.has(node.name.getText()) && node.initializer && isWords(node.initializer)
    ? [node.initializer]
    : [];

/** Words that stand in a page instead of in the catalogues, with where they stand. */
export const literalTexts = (source: ts.SourceFile): readonly string[] =>
  nodesBelow(source)
    .flatMap((node) => [...inChild(node), ...inAttribute(node)])
    .map((node) => {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart());
      return `${source.fileName}:${line + 1}: ${node.getText().trim()}`;
    });
