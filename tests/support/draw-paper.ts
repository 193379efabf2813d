import { createHash } from 'node:crypto';
import { buffer } from 'node:stream/consumers';
import { drawBuildRecord } from '@hull-record/paper';
import { aView } from './paper-views.js';

/** Prints the SHA-256 of the usual paper, for comparing processes; the moment it is made is the first argument. */
const bytes = await buffer(drawBuildRecord(aView(), new Date(process.argv[2] ?? '')));
process.stdout.write(createHash('sha256').update(bytes).digest('hex'));
