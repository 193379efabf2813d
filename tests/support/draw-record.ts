import 'reflect-metadata';
import { createHash } from 'node:crypto';
import { buffer } from 'node:stream/consumers';
import { serviceDataSource } from '../../apps/service/src/platform/database/data-source.js';
import { DrawBuildRecord } from '../../apps/service/src/records/build-record.query.js';

/** Prints the SHA-256 of a hull's build record, the clock and the time zone: database URL and hull are the arguments. */
const [url = '', hull = ''] = process.argv.slice(2);
const db = await serviceDataSource(url, 1).initialize();
const { pdf } = await new DrawBuildRecord(db).run(hull);
const sha256 = createHash('sha256')
  .update(await buffer(pdf))
  .digest('hex');
const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
process.stdout.write(JSON.stringify({ sha256, year: new Date().getFullYear(), timeZone }));
await db.destroy();
