import 'reflect-metadata';
import { runVerify } from './verify/command.js';
import { whyNotStarted } from './platform/config/why-not-started.js';

try {
  process.exitCode = await runVerify(process.argv.slice(2), process.env, (line) => process.stdout.write(`${line}\n`));
} catch (error) {
  process.stderr.write(`Cannot verify.\n${whyNotStarted(error)}\n`);
  process.exitCode = 2;
}
