import { describe, expect, it } from '@jest/globals';
import ts from 'typescript';
import { literalTexts } from '../../support/web/literal-texts.js';
import { webSources } from '../../support/web/sources.js';

const inPage = (jsx: string): readonly string[] =>
  literalTexts(ts.createSourceFile('page.tsx', `const page = ${jsx};`, ts.ScriptTarget.Latest, true));

describe('a text that stands in a page instead of in the catalogues', () => {
  it.each([
    ['<p>Some words</p>'],
    ["<p>{'Some words'}</p>"],
    ["<p>{open ? 'open' : t('app.all')}</p>"],
    ['<p>{`${count} hulls`}</p>'],
    ["<p>{count + ' hulls'}</p>"],
    ["<p>{name ?? 'unknown'}</p>"],
    ['<Section name="Life" />'],
    ["<img alt={'A hull'} />"],
    ['<svg aria-label={`Map of ${part}`} />'],
  ])('is found: %s', (jsx) => {
    expect(inPage(jsx)).toHaveLength(1);
  });

  it.each([
    ['<p className="lead">{t(\'app.all\')}</p>'],
    ['<p>{count} –</p>'],
    ["<p>{state === 'open' ? t('app.all') : null}</p>"],
    ['<Text of="app.all" with={{ link: (inside) => <Link to="/hulls">{inside}</Link> }} />'],
    ['<p>{`${day}, ${minute}`}</p>'],
  ])('is not seen in %s', (jsx) => {
    expect(inPage(jsx)).toEqual([]);
  });

  it('stands nowhere in the web app', () => {
    const sources = webSources();
    expect(sources.length).toBeGreaterThan(80);
    expect(sources.flatMap(literalTexts)).toEqual([]);
  });
});
