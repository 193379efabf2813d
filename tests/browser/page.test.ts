import { afterAll, beforeAll } from '@jest/globals';
import './cases/hull-page.js';
import './cases/lot-page.js';
import './cases/finding.js';
import './cases/troubles.js';
import './cases/sign-in.js';
import './cases/reading-ease.js';
import './cases/next-layer.js';
import './cases/failing.js';
import './cases/choices.js';
import './cases/addresses.js';
import './cases/first-load.js';
import { clearStage, setStage } from './stage.js';

// The cases share one service, one story and one browser: each costs seconds to start.
beforeAll(setStage, 120_000);
afterAll(clearStage);
