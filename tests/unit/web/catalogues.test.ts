import { describe, expect, it } from '@jest/globals';
import { BASES, DEFECT_KINDS, MATERIAL_ROLES, READING_KINDS_OF_THE_SHOP } from '@hull-record/trade';
import { DISPOSITIONS, LABELLED, LIFE_FACTS, LOT_STATES, ORIGINS, PART_KINDS } from '@hull-record/contracts';
import { IntlMessageFormat } from 'intl-messageformat';
import { wholeEn as en } from '../../../apps/web/src/language/whole.en.js';
import { wholeEs as es } from '../../../apps/web/src/language/whole.es.js';
import { textKeysUsed } from '../../support/web/keys-used.js';

const keys = Object.keys(en) as (keyof typeof en)[];
const vocabulary = (key: string): boolean => /^(term|kind)\./.test(key);

type Node = ReturnType<IntlMessageFormat['getAst']>[number];

/** What a message has to be given, names of values and of tags, at any depth. */
const namesIn = (nodes: readonly Node[]): readonly string[] =>
  nodes.flatMap((node) => {
    const below = 'children' in node ? node.children : [];
    const branches = 'options' in node ? Object.values(node.options).flatMap(({ value }) => value) : [];
    const own = 'children' in node || ('value' in node && node.type !== 0) ? [String(node.value)] : [];
    return [...own, ...namesIn(below), ...namesIn(branches)];
  });

const names = (message: string, language: string): readonly string[] =>
  [...new Set(namesIn(new IntlMessageFormat(message, language).getAst()))].sort();

describe('the texts of the web app', () => {
  it('are the same in number and name in English and Spanish', () => {
    expect(keys.length).toBeGreaterThan(300);
    expect(Object.keys(es).sort()).toEqual([...keys].sort());
  });

  it('ask for the same values in both, and none is empty', () => {
    const differing = keys.filter((key) => String(names(en[key], 'en')) !== String(names(es[key], 'es')));
    expect(differing).toEqual([]);
    expect(keys.filter((key) => en[key].trim() === '' || es[key].trim() === '')).toEqual([]);
  });

  it('name their values so that the compiler finds them: a branch of a plural begins with # or has a space', () => {
    const found = (message: string): readonly string[] => [
      ...[...message.matchAll(/\{([^{}]*)/g)].map(([, inside = '']) => inside.split(',')[0] ?? ''),
      ...[...message.matchAll(/<(\w+)>/g)].map(([, tag = '']) => tag),
    ];
    const named = (message: string): readonly string[] =>
      [...new Set(found(message).filter((name) => !/^#|^$| /.test(name)))].sort();
    for (const key of keys) expect([key, named(en[key])]).toEqual([key, names(en[key], 'en')]);
  });

  it('are all said somewhere, and nothing is said that is no text', () => {
    const { keys: said, starts } = textKeysUsed();
    const used = (key: string): boolean => said.has(key) || starts.some((start) => key.startsWith(start));
    expect(keys.filter((key) => !vocabulary(key) && !used(key))).toEqual([]);
    expect(starts.filter((start) => !keys.some((key) => key.startsWith(start)))).toEqual([]);
  });

  it('differ between the languages, save for names and signs', () => {
    const same = keys.filter((key) => en[key] === es[key] && /[a-z]{4}/.test(en[key].replace(/[{<][^}>]*[}>]/g, '')));
    expect(same).toEqual(['app.name', 'record.material', 'term.gel coat']);
  });
});

describe('the fixed words of the record', () => {
  const parts = ['hull number', 'HIN', 'port', 'starboard', 'centreline', 'layer', 'joint', 'touch-up', 'whole part'];
  const verdicts = ['inside', 'outside', 'cannot be judged', 'no limit'];
  const defects = ['open', 'repair to be accepted', 'repaired', 'concession', 'scrapped'];
  const readings = Object.keys(READING_KINDS_OF_THE_SHOP);

  it.each([
    ['states of lots', LOT_STATES],
    ['origins', ORIGINS],
    ['roles', MATERIAL_ROLES],
    ['bases', BASES],
    ['life facts', LIFE_FACTS],
    ['kinds of parts', PART_KINDS],
    ['readings', readings],
    ['dispositions', DISPOSITIONS],
    ['what has a label', LABELLED],
    ['verdicts', verdicts],
    ['states of defects', defects],
    ['places and numbers', parts],
  ] as const)('%s are all there, and stand in English as the record says them', (_, words) => {
    const english: Readonly<Record<string, string>> = en;
    expect(words.map((word) => english[`term.${word}`])).toEqual(words);
  });

  it('kinds of defects have the labels of the trade', () => {
    const kinds = keys.filter((key) => key.startsWith('kind.')).map((key) => [key, en[key]]);
    expect(kinds.sort()).toEqual(DEFECT_KINDS.map(({ code, label }) => [`kind.${code}`, label]).sort());
  });
});
