import { once } from 'node:events';
import { writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { createApp } from './create-app.js';
import { DemoPlant } from './demo/demo-plant.js';
import { ConfigWrong, readConfig, type Config } from './platform/config/config.js';
import { openDatabase } from './platform/database/open-database.js';
import { openApiDocument } from './platform/http/openapi.js';

const WEB_DIR = fileURLToPath(new URL('../../web/dist', import.meta.url));

const say = (line: string): void => console.log(line);

/** Starts everything in order, and stops it in the other order at Ctrl-C. */
const start = async (config: Config): Promise<void> => {
  await mkdir(config.dataDir, { recursive: true });
  const database = await openDatabase(config, say);
  const app = await createApp({ ...database, plant: config.plant, dataDir: config.dataDir, webDir: WEB_DIR });
  if (process.argv.includes('--write-openapi')) {
    writeFileSync(process.argv.at(-1) as string, `${JSON.stringify(openApiDocument(app), null, 2)}\n`);
    await app.close();
    return database.close();
  }
  await app.listen(config.port, config.host);
  tellWhereToLook(await app.getUrl(), config);
  const demo = app.get(DemoPlant);
  const loading = config.demo ? demo.load(say) : Promise.resolve();
  await Promise.race(['SIGINT', 'SIGTERM'].map((signal) => once(process, signal)));
  say('Stopping.');
  demo.stop();
  await loading;
  await app.close();
  await database.close();
  say('Stopped. The data stays.');
};

const tellWhereToLook = (url: string, config: Config): void => {
  const address = url.replace('[::1]', 'localhost');
  say(`Hull Record is at ${address}`);
  say(`  API page   ${address}/api/docs`);
  say(`  Data in    ${config.dataDir}`);
  say('  Until people sign in, calls name badge ADMIN and device DESK, or any that you register.');
  say('  Ctrl-C stops it; the data stays.');
};

try {
  await start(readConfig(process.env));
} catch (error) {
  console.error(error instanceof ConfigWrong ? `Cannot start.\n${error.message}` : error);
  process.exitCode = 1;
}
