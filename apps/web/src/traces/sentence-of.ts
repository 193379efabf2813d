import type { TraceGraph } from '@hull-record/contracts';
import type { Words } from '../words/words.js';

/** What a trace shows, in a sentence or two. */
export const sentenceOf = ({ of, codes, nodes }: TraceGraph, { t, mass }: Words): string => {
  const hulls = nodes.filter(({ kind, possibly }) => kind === 'hull' && !possibly);
  if (of === 'hulls') {
    const sources = nodes.filter(({ origin }) => origin === 'received' || origin === 'unidentified');
    const kg = hulls.reduce((sum, node) => sum + (node.kg ?? 0), 0);
    return t('traces.ofHulls', { hulls: codes.join(', '), kg: mass(kg), count: sources.length });
  }
  const [first] = [...hulls].sort((a, b) => (b.kg ?? 0) - (a.kg ?? 0));
  const parts = nodes.filter(({ kind, possibly }) => kind === 'part' && !possibly).length;
  const all = t('traces.ofLot', { lot: codes.join(', '), hulls: hulls.length, parts });
  const most = first ? ` ${t('traces.most', { hull: first.code, kg: mass(first.kg ?? 0) })}` : '';
  const possibly = nodes.filter((node) => node.possibly).length;
  return `${all}${most}${possibly === 0 ? '' : ` ${t('traces.possiblyIn', { count: possibly })}`}`;
};
