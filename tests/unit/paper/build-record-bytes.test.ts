import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { promisify } from 'node:util';
import { describe, expect, it } from '@jest/globals';
import { drawBuildRecord } from '@hull-record/paper';
import { aView } from '../../support/paper-views.js';
import { CREATED, draw } from '../../support/read-pdf.js';

const sha256 = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');

const drawElsewhere = async (timeZone: string): Promise<string> => {
  const { stdout } = await promisify(execFile)(
    process.execPath,
    [
      '--conditions=source',
      '--import',
      './tests/support/load-typescript.mjs',
      'tests/support/draw-paper.ts',
      CREATED.toISOString(),
    ],
    { env: { ...process.env, TZ: timeZone, NODE_OPTIONS: '' } },
  );
  return stdout;
};

describe('the bytes of a build record', () => {
  it('are the same for the same view made at the same moment', async () => {
    expect(sha256(await draw(aView()))).toBe(sha256(await draw(aView())));
  });

  it('do not depend on the time zone or the hour of the process that draws', async () => {
    const tokyo = await drawElsewhere('Asia/Tokyo');
    const honolulu = await drawElsewhere('Pacific/Honolulu');
    expect(tokyo).toMatch(/^[0-9a-f]{64}$/);
    expect(honolulu).toBe(tokyo);
    expect(sha256(await draw(aView()))).toBe(tokyo);
  });

  it('change with a single digit of the view', async () => {
    const changed = aView({ model: 'TS 86, open, 8.7 m' });
    expect(sha256(await draw(changed))).not.toBe(sha256(await draw(aView())));
  });

  it('carry the moment they were made, and no name of a tool', async () => {
    const raw = (await draw(aView())).toString('latin1');
    expect(raw).toContain('(D:20261126143100Z)');
    expect(raw).not.toMatch(/PDFKit/);
    expect(raw).toContain('(Hull Record)');
  });

  it('are not made for a moment that is no date', () => {
    expect(() => drawBuildRecord(aView(), new Date('yesterday'))).toThrow(TypeError);
  });
});
