import { mkdirSync, realpathSync } from 'node:fs';
import { choosePrograms } from './choose-programs.js';
import { clusterPlace, type ClusterPlace, rememberPlace } from './cluster-place.js';
import { EmbeddedPostgresError } from './embedded-error.js';
import { freePort } from './free-port.js';
import { initCluster, SUPERUSER } from './init-cluster.js';
import { locateNative } from './locate-binaries.js';
import { takeOwnership } from './owner-lock.js';
import { type Postmaster, startPostmaster } from './postmaster.js';
import { stopLeftover } from './stop-postmaster.js';
import { readPassword } from './superuser-password.js';

/** How the embedded PostgreSQL is started. */
export interface EmbeddedOptions {
  /** The product's DATA_DIR; made if it does not exist. */
  readonly dataDir: string;
  /** The folder with bin, lib and share of PostgreSQL; by default that of the installed platform package. */
  readonly nativeDir?: string;
  /** A TCP port on 127.0.0.1; by default one that is free. */
  readonly port?: number;
  /** Receives what is worth telling the person who starts the service, a line at a time, without line ends. */
  readonly say: (line: string) => void;
  /** Settings of postgresql.conf that differ from the defaults; where it listens cannot be changed. */
  readonly settings?: Readonly<Record<string, string>>;
  /** Where root keeps programs and clusters that cannot stay where they are; by default /var/lib/hull-record. */
  readonly stateDir?: string;
}

/** A running embedded PostgreSQL. */
export interface Embedded {
  readonly host: '127.0.0.1';
  readonly port: number;
  readonly superuser: { readonly user: string; readonly password: string };
  /** The product's DATA_DIR, absolute and without links. */
  readonly dataDir: string;
  /** PostgreSQL's own data folder: `<dataDir>/pg`, or elsewhere if its user cannot reach that. */
  readonly clusterDir: string;
  /** Stops PostgreSQL in order and gives the folder free; may be called more than once. */
  stop(): Promise<void>;
}

const STATE_DIR = '/var/lib/hull-record';
const PORT_TRIES = 5;

type Prepared = Omit<Parameters<typeof startPostmaster>[0], 'port'>;

/** A port found free may be taken before PostgreSQL binds it; then another is tried. A port asked for is never changed. */
async function startOnPort(prepared: Prepared, wanted: number | undefined): Promise<[Postmaster, number]> {
  for (let tries = 1; ; tries += 1) {
    const port = wanted ?? (await freePort());
    try {
      return [await startPostmaster({ ...prepared, port }), port];
    } catch (error) {
      const taken = error instanceof Error && error.message.includes('could not bind');
      if (wanted !== undefined || !taken || tries === PORT_TRIES) throw error;
    }
  }
}

async function startAt(
  options: EmbeddedOptions,
  dataDir: string,
  place: ClusterPlace,
): Promise<Omit<Embedded, 'stop'> & Postmaster> {
  const { say, settings = {}, stateDir = STATE_DIR } = options;
  const { cluster, account } = place;
  const nativeDir = await choosePrograms({ nativeDir: options.nativeDir ?? locateNative(), account, stateDir, say });
  if (await stopLeftover(nativeDir, cluster)) {
    say('A PostgreSQL that an earlier start left running on this data was stopped.');
  }
  if (await initCluster({ nativeDir, cluster, account, sync: settings.fsync !== 'off' })) {
    say(`A new database was made in ${cluster}.`);
  }
  rememberPlace(dataDir, cluster);
  const superuser = { user: SUPERUSER, password: readPassword(cluster) };
  const [postmaster, port] = await startOnPort({ nativeDir, cluster, account, settings, say }, options.port);
  return { host: '127.0.0.1', port, superuser, dataDir, clusterDir: cluster, ...postmaster };
}

/**
 * Starts the embedded PostgreSQL of a DATA_DIR, making its database at the first start.
 *
 * It listens on 127.0.0.1 alone and writes `postgres.log` beside the cluster. What a killed service left running is
 * stopped first; a DATA_DIR that a living service uses is refused.
 *
 * @throws EmbeddedPostgresError with a message that says what was found and what to do.
 */
export async function startEmbedded(options: EmbeddedOptions): Promise<Embedded> {
  mkdirSync(options.dataDir, { recursive: true });
  const dataDir = realpathSync(options.dataDir);
  const place = clusterPlace(dataDir, options.stateDir ?? STATE_DIR, options.say);
  const release = await takeOwnership(`${place.cluster}.owner`, dataDir);
  try {
    const { pid: _pid, ...running } = await startAt(options, dataDir, place);
    let stopped: Promise<void> | undefined;
    return { ...running, stop: () => (stopped ??= running.stop().then(release)) };
  } catch (error) {
    // A PostgreSQL that would not stop still uses the data; only a start that left nothing behind gives it free.
    if (!(error instanceof EmbeddedPostgresError && error.code === 'stop-failed')) release();
    throw error;
  }
}
