import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { plainPage } from '../../../apps/service/src/platform/http/plain-page.js';

const withLine = (line: string): string => plainPage({ title: 'Title', lines: [line], links: [] });

describe('a plain page', () => {
  it('takes nothing that it is told for markup', () => {
    const told = plainPage({
      ...{ title: '<i>', lines: ['<script>alert("1")</script>'] },
      links: [{ to: '"><b>', text: "it's & more" }],
    });
    expect(told).toContain('<h1>&lt;i&gt;</h1>');
    expect(told).toContain('<p>&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt;</p>');
    expect(told).toContain('<a href="&quot;&gt;&lt;b&gt;">it&#39;s &amp; more</a>');
  });

  it('has the same tags whatever a line says', () => {
    const tags = (page: string): string[] => page.match(/<[^>]*>/g) ?? [];
    fc.assert(fc.property(fc.string(), (line) => expect(tags(withLine(line))).toEqual(tags(withLine('plain')))));
  });

  it('goes on by itself only when it is told to', () => {
    expect(withLine('x')).not.toContain('http-equiv');
    const going = plainPage({ title: 'T', lines: [], links: [], goOnTo: '/?a&b' });
    expect(going).toContain('<meta http-equiv="refresh" content="0; url=/?a&amp;b">');
  });
});
