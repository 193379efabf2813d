import { afterAll, beforeAll } from '@jest/globals';
import './cases/bay-work.js';
import './cases/bay-off-line.js';
import './cases/bay-screens.js';
import { clearStage, setStage } from './stage.js';

// The cases share one service, one story and one browser: each costs seconds to start.
beforeAll(setStage, 120_000);
afterAll(clearStage);
