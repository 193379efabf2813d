import type { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import { setImmediate } from 'node:timers/promises';
import { beforeAll, describe, expect, it } from '@jest/globals';
import { drawBuildRecord, type PictureView } from '@hull-record/paper';
import { openDocument } from '../../../libs/paper/src/document.js';
import { drawInSteps, type Steps } from '../../../libs/paper/src/draw-in-steps.js';
import { aDefect, aHullPart, aView } from '../../support/paper-views.js';
import { CREATED } from '../../support/read-pdf.js';
import { noisy } from '../../support/photos.js';

const COUNT = 200;
let jpeg: Buffer;
beforeAll(async () => {
  jpeg = await noisy(300, 300).jpeg().toBuffer();
});

/** A paper of some megabytes, and how many of its pictures were read so far. */
const large = (picture: Partial<PictureView> = {}) => {
  const read = { count: 0 };
  const counted: PictureView = { width: 300, height: 300, read: () => ((read.count += 1), jpeg), ...picture };
  const photo = { title: 'photo 1 of defect D4', taken: 'taken some day', sha256: 'ab'.repeat(32), picture: counted };
  const defects = [aDefect({ photos: Array.from({ length: COUNT }, () => photo) })];
  return { read, view: aView({ parts: [aHullPart({ defects })] }) };
};

describe('a paper that is larger than what may wait for its reader', () => {
  it('is drawn on only while it is read', async () => {
    const { read, view } = large();
    const paper = drawBuildRecord(view, CREATED);
    const most = Math.ceil((1024 * 1024) / jpeg.length) + 3;
    for (let turn = 0; turn < 20; turn += 1) await setImmediate();
    expect(read.count).toBeLessThanOrEqual(most);
    let behind = 0;
    let sent = 0;
    for await (const piece of paper) {
      sent += (piece as Buffer).length;
      behind = Math.max(behind, read.count * jpeg.length - sent);
      await setImmediate();
    }
    expect(read.count).toBe(COUNT);
    expect(sent).toBeGreaterThan(COUNT * jpeg.length);
    expect(behind).toBeLessThan(2.5 * 1024 * 1024);
  });

  it('has the same bytes, read slowly or at once', async () => {
    const pieces: Buffer[] = [];
    for await (const piece of drawBuildRecord(large().view, CREATED)) {
      pieces.push(piece as Buffer);
      await setImmediate();
    }
    expect(Buffer.concat(pieces).equals(await buffer(drawBuildRecord(large().view, CREATED)))).toBe(true);
  });

  it('lets others have their turn while it is drawn', async () => {
    const { read, view } = large();
    const whole = buffer(drawBuildRecord(view, CREATED));
    const seen = new Set<number>();
    for (let turn = 0; turn < 2_000 && read.count < COUNT; turn += 1) {
      seen.add(read.count);
      await setImmediate();
    }
    await whole;
    expect(seen.size).toBeGreaterThan(3);
  });

  it('lets them also where many steps write little', async () => {
    const doc = openDocument({ title: 'Steps', author: '', subject: '', keywords: '' }, CREATED);
    let step = 0;
    const steps = function* (): Steps {
      doc.addPage().text('x');
      (doc as unknown as Readable).push(Buffer.alloc(1024 * 1024));
      for (; step < 100; step += 1) yield;
    };
    const whole = buffer(drawInSteps(doc, steps()));
    const seen = new Set<number>();
    for (let turn = 0; turn < 2_000 && step < 100; turn += 1) {
      seen.add(step);
      await setImmediate();
    }
    await whole;
    expect(seen.size).toBeGreaterThanOrEqual(5);
  });

  it('that cannot be drawn fails who reads it, and when it fails early whoever asked for it', async () => {
    let left = 150;
    const failing = {
      read: () => {
        if ((left -= 1) < 0) throw new Error('no more pictures');
        return jpeg;
      },
    };
    await expect(buffer(drawBuildRecord(large(failing).view, CREATED))).rejects.toThrow('no more pictures');
    expect(() => drawBuildRecord(large(failing).view, CREATED)).toThrow('no more pictures');
  });

  it('is left as it is when nobody reads on', async () => {
    const { read, view } = large();
    const paper = drawBuildRecord(view, CREATED);
    for await (const _piece of paper) break;
    expect(paper.destroyed).toBe(true);
    for (let turn = 0; turn < 50; turn += 1) await setImmediate();
    expect(read.count).toBeLessThan(COUNT);
  });
});
