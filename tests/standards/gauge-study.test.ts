import { publishedCases } from '../support/published-cases.js';

publishedCases('gauge-study');
