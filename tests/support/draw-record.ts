import 'reflect-metadata';
import { createHash } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { serviceDataSource } from '../../apps/service/src/platform/database/data-source.js';
import { PhotoStore } from '../../apps/service/src/platform/photos/photo-store.js';
import { PrintCopies } from '../../apps/service/src/platform/photos/print-copies.js';
import { DrawBuildRecord } from '../../apps/service/src/records/build-record.query.js';

/**
 * Prints the SHA-256 of a hull's build record, the clock and the time zone: database URL, hull and folder of photos are
 * the arguments. Print copies are made anew.
 */
const [url = '', hull = '', photos = ''] = process.argv.slice(2);
const db = await serviceDataSource(url, 1).initialize();
const folder = await mkdtemp(join(tmpdir(), 'hull-record-copies-'));
const { pdf } = await new DrawBuildRecord(db, new PrintCopies(new PhotoStore(photos), folder)).run(hull);
const sha256 = createHash('sha256')
  .update(await buffer(pdf))
  .digest('hex');
const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
process.stdout.write(JSON.stringify({ sha256, year: new Date().getFullYear(), timeZone }));
await db.destroy();
await rm(folder, { recursive: true });
