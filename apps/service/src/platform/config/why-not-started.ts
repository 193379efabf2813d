import { EmbeddedPostgresError } from '../embedded/embedded-error.js';
import { ConfigWrong, type Config } from './config.js';

/**
 * What to tell the person who started the service when it could not start: what was found and what to do, without the
 * lines of code it came from. An error that nobody foresaw keeps them.
 */
export const whyNotStarted = (error: unknown): string => {
  if (error instanceof ConfigWrong || error instanceof EmbeddedPostgresError) return error.message;
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
};

const LISTENING: Readonly<Record<string, string>> = {
  EADDRINUSE: 'is taken: stop what listens there, or set PORT to another',
  EACCES: 'is not allowed to this user: set PORT to one above 1023',
  EADDRNOTAVAIL: 'cannot be used: this machine has no such address; set HOST to 127.0.0.1',
};

/** The reason why the service could not listen, as a refusal of its setting when it is one. */
export const whyNotListening = (error: unknown, { host, port }: Pick<Config, 'host' | 'port'>): unknown => {
  const meaning = LISTENING[(error as NodeJS.ErrnoException).code ?? ''];
  return meaning ? new ConfigWrong(`PORT: ${port} on ${host} ${meaning}.`, { cause: error }) : error;
};

const MAKING: Readonly<Record<string, string>> = {
  EEXIST: 'is a file: name a folder',
  ENOTDIR: 'lies below a file: name a folder',
  EACCES: 'cannot be made or written by this user: allow it, or name another folder',
  EPERM: 'cannot be made or written by this user: allow it, or name another folder',
  EROFS: 'lies on a disk that is read only: name another folder',
  ENOSPC: 'cannot be made: the disk is full',
};

/** The reason why the data folder could not be made or written, as a refusal of its setting when it is one. */
export const whyNoDataDir = (error: unknown, dataDir: string): unknown => {
  const meaning = MAKING[(error as NodeJS.ErrnoException).code ?? ''];
  return meaning ? new ConfigWrong(`DATA_DIR: ${dataDir} ${meaning}.`, { cause: error }) : error;
};
