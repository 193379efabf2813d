import { afterAll, beforeAll } from '@jest/globals';
import './cases/station-start.js';
import './cases/station-tasks.js';
import './cases/station-making.js';
import './cases/station-offline.js';
import { clearStage, setStage } from './stage.js';

// The cases share one service, one story and one browser: each costs seconds to start.
beforeAll(setStage, 120_000);
afterAll(clearStage);
