import { describe, expect, it } from '@jest/globals';
import PDFDocument from 'pdfkit';
import { buffer } from 'node:stream/consumers';
import { Readable } from 'node:stream';
import { drawVerdict } from '../../../libs/paper/src/verdict-mark.js';
import type { Verdict } from '@hull-record/paper';

/** The lines of a page with a single verdict's shape, without any colour. */
const shapeOf = async (verdict: Verdict): Promise<string> => {
  const doc = new PDFDocument({ compress: false });
  drawVerdict(doc, verdict, 100, 100);
  doc.end();
  const raw = (await buffer(doc as unknown as Readable)).toString('latin1');
  const content = /stream\n([\s\S]*?)\nendstream/.exec(raw)?.[1] ?? '';
  return content
    .split('\n')
    .filter((line) => / (?:m|l|c|re)$/.test(line))
    .join('\n');
};

describe('the shape of a verdict', () => {
  it('differs for each verdict without regard to colour', async () => {
    const shapes = await Promise.all((['inside', 'outside', 'cannot be judged', 'no limit'] as const).map(shapeOf));
    expect(shapes.every((shape) => shape.length > 0)).toBe(true);
    expect(new Set(shapes).size).toBe(4);
    const [inside, outside] = shapes;
    expect(inside).toMatch(/ c$/m);
    expect(outside).toMatch(/ re$/m);
    expect(outside).not.toMatch(/ c$/m);
  });
});
