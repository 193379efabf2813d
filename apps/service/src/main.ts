import { fileURLToPath } from 'node:url';
import { readConfig } from './platform/config/config.js';
import { whyNotStarted } from './platform/config/why-not-started.js';
import { runService } from './run-service.js';
import { writeOpenApi } from './write-openapi.js';

const WEB_DIR = fileURLToPath(new URL('../../web', import.meta.url));

/** The value after an option of the command line. */
const valueOf = (option: string): string | undefined => {
  const place = process.argv.indexOf(option);
  return place < 0 ? undefined : process.argv[place + 1];
};

try {
  const document = valueOf('--write-openapi');
  if (document) await writeOpenApi(document);
  else await runService(readConfig(process.env), { webDir: WEB_DIR }, (line) => console.log(line));
} catch (error) {
  console.error(`Cannot start.\n${whyNotStarted(error)}`);
  process.exitCode = 1;
}
