import type { NestExpressApplication } from '@nestjs/platform-express';
import { once } from 'node:events';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { accessSync, constants, mkdirSync } from 'node:fs';
import { createApp, type ToCreate } from './create-app.js';
import { DemoPlant } from './demo/demo-plant.js';
import { prepareSignIn } from './prepare-sign-in.js';
import { AccessSettings } from './platform/access/settings.js';
import type { Config } from './platform/config/config.js';
import { whyNoDataDir, whyNotListening } from './platform/config/why-not-started.js';
import { JournalTimer } from './platform/journal/journal-timer.js';
import { headWaysOf } from './platform/journal/head-ways.js';
import { openDatabase } from './platform/database/open-database.js';
import { toldAtStart } from './records/certificates/out-of-time.js';
import { SigningKey } from './records/certificates/signing-key.js';
import { hearStop, StopAsked } from './stop-asked.js';

/** Answers that are being sent get this long to end when the service stops, ms. */
const PATIENCE_MS = 5_000;

type Say = (line: string) => void;

/** What has been started, to be stopped in the other order. */
type Started = (() => unknown)[];

/** Starts everything in order, waits until a stop is asked for, and stops it in the other order, whatever happened. */
export const runService = async (config: Config, web: Pick<ToCreate, 'webDir'>, say: Say): Promise<void> => {
  const stop = hearStop();
  const started: Started = [];
  try {
    await startAll(config, web, say, stop, started);
    if (!stop.aborted) await once(stop, 'abort');
  } catch (error) {
    if (!(error instanceof StopAsked)) throw error;
  } finally {
    if (stop.aborted) say('Stopping.');
    for (const end of started.reverse()) await end();
  }
  say('Stopped. The data stays.');
};

const startAll = async (
  config: Config,
  web: Pick<ToCreate, 'webDir'>,
  say: Say,
  stop: AbortSignal,
  started: Started,
): Promise<void> => {
  makeDataDir(config.dataDir);
  const { db, clusterDir, close } = await openDatabase(config, say);
  started.push(close);
  stop.throwIfAborted();
  const app = await createApp({ db, ...toCreate(config), ...web });
  started.push(() => closeApp(app));
  stop.throwIfAborted();
  // A key that does not open is told to who starts it, not to who issues the first certificate.
  if (config.evidence.signer) {
    const told = toldAtStart(await app.get(SigningKey).load(config.plant.code), new Date());
    if (told !== null) say(told);
  }
  const signIn = await prepareSignIn(app, config.demo);
  const url = await listen(app, config);
  started.push(app.get(JournalTimer).begin(config.evidence.headsEveryMinutes));
  tellWhereToLook({ url: config.publicUrl ?? url, clusterDir, signIn }, config, say);
  if (config.demo) started.push(loadDemo(app, say));
};

/** What the configuration says about how people reach the service. */
const toCreate = (config: Config): Omit<ToCreate, 'db' | 'webDir'> => {
  const { plant, dataDir, tls, trustedProxy, publicUrl, openId, demo, evidence } = config;
  const access = new AccessSettings({
    secure: publicUrl !== null || tls !== null,
    hosts: publicUrl === null ? [] : [new URL(publicUrl).host],
    localIsHere: trustedProxy.length === 0,
    ...{ demo, openId },
  });
  const address = publicUrl?.replace(/\/$/, '') ?? `http://localhost:${config.port}`;
  return {
    plant,
    dataDir,
    tls,
    trustedProxy,
    access,
    address,
    keysDir: evidence.keysDir,
    headWays: headWaysOf(evidence),
    ownSigner: evidence.signer,
  };
};

const makeDataDir = (dataDir: string): void => {
  try {
    mkdirSync(dataDir, { recursive: true });
    accessSync(dataDir, constants.W_OK | constants.X_OK);
  } catch (error) {
    throw whyNoDataDir(error, dataDir);
  }
};

/** Listens by the server itself: the framework would log the error that is told in words of its own. */
const listen = async (app: NestExpressApplication, { host, port, tls }: Config): Promise<string> => {
  const server = app.getHttpServer() as Server;
  try {
    server.listen(port, host);
    await once(server, 'listening');
  } catch (error) {
    throw whyNotListening(error, { host, port });
  }
  const at = server.address() as AddressInfo;
  return `${tls ? 'https' : 'http'}://${at.family === 'IPv6' ? `[${at.address}]` : at.address}:${at.port}`;
};

const closeApp = async (app: NestExpressApplication): Promise<void> => {
  const server = app.getHttpServer() as Server;
  const impatient = setTimeout(() => server.closeAllConnections(), PATIENCE_MS);
  await app.close();
  clearTimeout(impatient);
};

/** Loads the demo in the background; what it gives back ends it after the fact being recorded. */
const loadDemo = (app: NestExpressApplication, say: Say): (() => Promise<void>) => {
  const demo = app.get(DemoPlant);
  const loading = demo.load(say).catch((error: unknown) => say(`The demo could not be loaded: ${String(error)}`));
  return () => {
    demo.stop();
    return loading;
  };
};

interface Place {
  readonly url: string;
  readonly clusterDir: string | null;
  readonly signIn: readonly string[];
}

const tellWhereToLook = ({ url, clusterDir, signIn }: Place, config: Config, say: Say): void => {
  say(`Hull Record is at ${url}`);
  say(`  API page   ${url}/api/docs`);
  say(`  Data in    ${config.dataDir}`);
  if (clusterDir !== null) say(`  Database   ${clusterDir}`);
  for (const line of signIn) say(`  ${line}`);
  say('  Ctrl-C stops it; the data stays.');
};
