import { publishedCases } from '../support/published-cases.js';

publishedCases('sampling');
