import { publishedCases } from '../support/published-cases.js';

publishedCases('many-tests');
