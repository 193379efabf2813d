import { afterAll, beforeAll } from '@jest/globals';
import './cases/signing-off-line.js';
import './cases/two-tablets.js';
import { deployed, deployFirst } from './cases/newer-version.js';
import { clearStage, setStageWith } from './stage.js';
import { buildWeb } from '../support/browser.js';

// The cases share one service, one story and one browser: each costs seconds to start.
beforeAll(async () => {
  buildWeb();
  await setStageWith({ webDir: (await deployFirst()).webDir });
}, 120_000);
afterAll(async () => {
  await clearStage();
  await deployed.close();
});
