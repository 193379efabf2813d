import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import { DataSource } from 'typeorm';
import { newId } from '../ids.js';
import { digestOfSecret } from './secrets.js';
import { BYTES_AT_MOST } from '../photos/not-a-photo.js';
import type { DeviceHere } from './read-caller.js';

/** A photo as large as is taken, with its record and what a form puts around the two, byte. */
const MOST_BYTES = BYTES_AT_MOST + 1024 * 1024;
/** A revoked device keeps no more than this with us. */
const MOST_ENTRIES = 5_000;

const KEEP = `
  insert into work.kept_entry (id, device_id, received_at, path, media, body, digest)
  select $1, $2, now(), $3, $4, $5, $6 where (select count(*) from work.kept_entry where device_id = $2) < ${MOST_ENTRIES}
  on conflict (device_id, digest) do nothing`;

/** Keeps what a revoked device sends, as it came, until quality admits it or sets it aside. */
@Injectable()
export class KeepEntry {
  constructor(private readonly db: DataSource) {}

  /** @returns its id, or null when it was not kept: too large, or too many */
  async run(device: DeviceHere, request: Request): Promise<string | null> {
    const media = request.headers['content-type'] ?? '';
    const body = /^application\/json\b/i.test(media)
      ? Buffer.from(JSON.stringify(request.body))
      : await readAll(request);
    if (body === null) return null;
    const path = request.originalUrl;
    const digest = digestOfSecret(`${path}\n${body.toString('base64')}`);
    await this.db.query(KEEP, [newId(), device.deviceId, path, media, body, digest]);
    const [kept] = await this.db.query<{ id: string }[]>(
      'select id from work.kept_entry where device_id = $1 and digest = $2',
      [device.deviceId, digest],
    );
    return kept?.id ?? null;
  }
}

const readAll = async (request: Request): Promise<Buffer | null> => {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request) {
    size += (part as Buffer).length;
    if (size > MOST_BYTES) return null;
    parts.push(part as Buffer);
  }
  return Buffer.concat(parts);
};
