import { createHash } from 'node:crypto';
import { existsSync, lchownSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { EmbeddedPostgresError } from './embedded-error.js';
import { blockedAt } from './reachable.js';
import { type Account, accountOf, databaseAccount, isRoot } from './run-as.js';
import { openFolder } from './stage.js';

/** Where the cluster is (or will be made), and as whom PostgreSQL runs there: undefined is this process's own user. */
export interface ClusterPlace {
  readonly cluster: string;
  readonly account: Account | undefined;
}

const locationFile = (dataDir: string): string => join(dataDir, 'postgres-location');
const exists = (cluster: string): boolean => existsSync(join(cluster, 'PG_VERSION'));

/** Reads where the cluster of a DATA_DIR was put when it could not be inside it. */
function rememberedPlace(dataDir: string): string | undefined {
  const file = locationFile(dataDir);
  if (!existsSync(file)) return undefined;
  const cluster = readFileSync(file, 'utf8').trim();
  if (existsSync(cluster)) return cluster;
  // Making an empty database here would look like the loss of every record.
  const message = `${file} says that the database is in ${cluster}, and it is not there. Bring it back from the backup, or remove ${file} to begin with an empty database.`;
  throw new EmbeddedPostgresError('data-missing', message);
}

/** Where the cluster of a DATA_DIR is, if there is one. */
export const placeOfCluster = (dataDir: string): string => rememberedPlace(dataDir) ?? join(dataDir, 'pg');

/** Remembers a cluster outside its DATA_DIR; called when it is complete, so that the file never names half a cluster. */
export function rememberPlace(dataDir: string, cluster: string): void {
  if (cluster !== join(dataDir, 'pg')) writeFileSync(locationFile(dataDir), `${cluster}\n`);
}

function ownPlace(cluster: string): ClusterPlace {
  const stat = statSync(cluster, { throwIfNoEntry: false });
  if (!stat || process.getuid === undefined || stat.uid === process.getuid()) return { cluster, account: undefined };
  const message = `The database in ${cluster} belongs to user id ${stat.uid}, and this process is user id ${process.getuid()}: start it as that user or as root.`;
  throw new EmbeddedPostgresError('wrong-owner', message);
}

/** Gives a whole cluster to an account, without following links. */
function giveTree(path: string, account: Account): void {
  lchownSync(path, account.uid, account.gid);
  for (const entry of readdirSync(path, { withFileTypes: true })) {
    const below = join(path, entry.name);
    if (entry.isDirectory()) giveTree(below, account);
    else lchownSync(below, account.uid, account.gid);
  }
}

/**
 * A cluster that an ordinary user made stays that user's, so that one start as root does not lock the user out; one that
 * root owns (brought back from an archive) is given to the database account.
 */
function existingPlace(cluster: string): ClusterPlace {
  const { uid, gid } = statSync(cluster);
  const account = uid === 0 ? databaseAccount() : accountOf(uid, gid);
  const blocked = blockedAt(join(cluster, '..'), account);
  if (blocked) {
    const message = `The user ${account.name}, who runs the database in ${cluster}, may not enter ${blocked}: allow it (chmod o+x), or move DATA_DIR.`;
    throw new EmbeddedPostgresError('wrong-owner', message);
  }
  if (uid === 0) giveTree(cluster, account);
  return { cluster, account };
}

function newPlace(dataDir: string, stateDir: string, say: (line: string) => void): ClusterPlace {
  const account = databaseAccount();
  if (!blockedAt(dataDir, account)) return { cluster: join(dataDir, 'pg'), account };
  const name = createHash('sha256').update(dataDir).digest('hex').slice(0, 12);
  const cluster = join(openFolder(join(openFolder(stateDir, 0o755), name), 0o711), 'pg');
  say(`The user ${account.name} cannot reach ${dataDir}: the database is kept in ${cluster}.`);
  return { cluster, account };
}

/** Decides where the cluster of a DATA_DIR (absolute, without links) is and as whom it runs. */
export function clusterPlace(dataDir: string, stateDir: string, say: (line: string) => void): ClusterPlace {
  const cluster = rememberedPlace(dataDir) ?? join(dataDir, 'pg');
  if (!isRoot()) return ownPlace(cluster);
  const place = exists(cluster) ? existingPlace(cluster) : newPlace(dataDir, stateDir, say);
  say(`PostgreSQL refuses to run as root: it runs as the user ${place.account?.name}.`);
  return place;
}
