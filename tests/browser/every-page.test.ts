import { afterAll, beforeAll } from '@jest/globals';
import './cases/every-page.js';
import './cases/every-route.js';
import { clearStage, setStage } from './stage.js';

// Beside the other cases, so that the two run at once.
beforeAll(setStage, 120_000);
afterAll(clearStage);
