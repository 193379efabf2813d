import 'reflect-metadata';
import type { NestExpressApplication } from '@nestjs/platform-express';
import { NestFactory } from '@nestjs/core';
import { AppModule, type Given } from './app.module.js';
import { OpenPlant } from './people/open-plant.js';
import type { Config, Reach } from './platform/config/config.js';
import { beginCall } from './platform/access/begin-call.js';
import { AccessSettings } from './platform/access/settings.js';
import { encryptedOnly } from './platform/http/encrypted-only.js';
import { knownHostsOnly } from './platform/http/known-hosts.js';
import { serveApiPage } from './platform/http/openapi.js';
import { SealJournal } from './platform/journal/seal-journal.js';
import { securityHeaders } from './platform/http/security-headers.js';
import { serveWeb } from './platform/http/serve-web.js';

/** What a service is made of: see AppModule; `webDir` is the folder of the web app, when it is to be served. */
export interface ToCreate extends Given {
  readonly plant: Config['plant'];
  readonly webDir?: string;
  readonly quiet?: boolean;
  /** The certificate it answers with itself. */
  readonly tls?: Reach['tls'];
  /** Proxies whose word about the caller is taken. */
  readonly trustedProxy?: readonly string[];
}

/** Makes the service on a migrated database, with its plant opened, ready to listen. */
export const createApp = async (asked: ToCreate): Promise<NestExpressApplication> => {
  const { plant, webDir, quiet, tls, trustedProxy = [], ...given } = asked;
  const access = new AccessSettings({ ...given.access, plant });
  const app = await NestFactory.create<NestExpressApplication>(AppModule.for({ ...given, access }), {
    ...(tls ? { httpsOptions: { ...tls } } : {}),
    logger: quiet ? ['error', 'fatal'] : ['error', 'fatal', 'warn'],
    abortOnError: false,
  });
  app.disable('x-powered-by');
  app.set('query parser', 'simple');
  if (trustedProxy.length > 0) app.set('trust proxy', [...trustedProxy]);
  app.use(securityHeaders(access), encryptedOnly(access), knownHostsOnly(access), beginCall);
  app.useBodyParser('json', { limit: '2mb' });
  serveApiPage(app);
  if (webDir !== undefined) serveWeb(app, webDir, plant.timeZone);
  // Before anybody writes: what was restored from another server is sealed as it came.
  await app.get(SealJournal).all();
  await app.init();
  await app.get(OpenPlant).run(plant);
  return app;
};
