import 'reflect-metadata';
import { runVerify } from './verify/command.js';
import { whyNotStarted } from './platform/config/why-not-started.js';

try {
  process.exitCode = await runVerify(process.argv.slice(2), process.env, (line) => console.log(line));
} catch (error) {
  console.error(`Cannot verify.\n${whyNotStarted(error)}`);
  process.exitCode = 2;
}
