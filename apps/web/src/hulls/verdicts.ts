import type { VerdictView } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { mark, type Shape } from '../marks/mark.js';

const SHAPES: Readonly<Record<VerdictView['verdict'], Shape>> = {
  inside: 'inside',
  outside: 'outside',
  'cannot be judged': 'near',
};

/** What was judged by a rule of the trade: each unfolds to what was found, the rule and its source. What is outside is open. */
export const verdictsOf = (verdicts: readonly VerdictView[]): Child => verdicts.map(verdict);

const verdict = ({ topic, verdict: word, detail, rule, source, corrected }: VerdictView): Child =>
  h(
    'details',
    word === 'outside' ? { open: '' } : {},
    h('summary', {}, mark(SHAPES[word], `${topic}: ${word}${corrected ? ', judged again' : ''}`)),
    h('p', {}, detail),
    h('p', { class: 'note soft' }, `${rule} ${source}`),
  );
