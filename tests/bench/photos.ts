import 'reflect-metadata';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { PhotoStore } from '../../apps/service/src/platform/photos/photo-store.js';
import { preparePhoto } from '../../apps/service/src/platform/photos/prepare-photo.js';
import { PrintCopies, type PhotoFiles } from '../../apps/service/src/platform/photos/print-copies.js';
import { drawBuildRecord } from '@hull-record/paper';
import { aDefect, aHullPart, aView } from '../support/paper-views.js';
import { CREATED } from '../support/read-pdf.js';
import { noisy } from '../support/photos.js';

/**
 * Measures a build record with 400 photos, each pixel unlike the next: how long its print copies and its pages take, how
 * long anybody else has to wait meanwhile, and what it holds: `npm run bench:photos`. Machines differ.
 */
const COUNT = 400;
const folder = mkdtempSync(join(tmpdir(), 'hull-record-bench-'));
const megabytes = (bytes: number): string => `${(bytes / 1024 / 1024).toFixed(0)} MB`;

const measured = async <T>(what: string, work: () => Promise<T>): Promise<T> => {
  const delay = monitorEventLoopDelay({ resolution: 5 });
  const memory = { most: 0 };
  const watch = setInterval(() => (memory.most = Math.max(memory.most, process.memoryUsage().rss)), 10);
  delay.enable();
  const from = performance.now();
  const result = await work();
  const took = (performance.now() - from) / 1000;
  delay.disable();
  clearInterval(watch);
  console.log(
    `${what.padEnd(34)} ${took.toFixed(1).padStart(5)} s, others wait ${(delay.max / 1e6).toFixed(0).padStart(4)} ms at most, resident ${megabytes(Math.max(memory.most, process.memoryUsage().rss))}`,
  );
  return result;
};

try {
  const store = new PhotoStore(join(folder, 'photos'));
  const photos: PhotoFiles[] = [];
  await measured(`${COUNT} photos of 2 megapixels taken in`, async () => {
    for (let i = 0; i < COUNT; i += 1) {
      const original = await noisy(1_600, 1_200, i + 1)
        .jpeg({ quality: 60 })
        .toBuffer();
      const { shown } = await preparePhoto(original);
      photos.push({
        originalSha256: await store.keep(original),
        shownSha256: await store.keep(shown),
        redactedOn: null,
      });
    }
  });
  const copies = new PrintCopies(store, join(folder, 'copies'));
  await measured('print copies made', () => copies.of(photos));
  const pictures = await measured('print copies found again', () => copies.of(photos));
  const shown = photos.map(({ originalSha256: sha256, shownSha256 }, i) => ({
    ...{ title: `photo ${i + 1} of defect D1`, taken: 'taken 3 Mar 2026 10:15 UTC, by Q-03', sha256 },
    picture: pictures.get(shownSha256) ?? null,
  }));
  const view = aView({ parts: [aHullPart({ defects: [aDefect({ mark: 'D1', photos: shown })] })] });
  const bytes = await measured('paper drawn and sent', async () => {
    let sent = 0;
    for await (const piece of drawBuildRecord(view, CREATED)) {
      sent += (piece as Buffer).length;
      await new Promise((resolve) => setImmediate(resolve));
    }
    return sent;
  });
  console.log(`the paper has ${megabytes(bytes)}`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
