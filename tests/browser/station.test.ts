import { afterAll, beforeAll } from '@jest/globals';
import './cases/station-start.js';
import './cases/station-tasks.js';
import './cases/station-making.js';
import './cases/station-offline.js';
import { camera, openCamera } from './cases/station-camera.js';
import { clearStage, setStageWith } from './stage.js';

// The cases share one service, one story and one browser: each costs seconds to start.
beforeAll(async () => setStageWith({ browserArgs: (await openCamera()).args }), 120_000);
afterAll(async () => {
  await clearStage();
  await camera.close();
});
