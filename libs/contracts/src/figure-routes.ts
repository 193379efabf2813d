import * as figures from './figures.js';
import * as flaws from './flaw-limits.js';
import { get, post } from './route.js';

/** Figures worked out by the rules of the trade, and the acceptance levels of flaws. */
export const figureRoutes = {
  readDose: get({
    path: '/api/materials/:material/dose',
    tag: 'figures',
    summary: 'How much catalyst a mix takes, with its cautions; nothing is recorded.',
    query: figures.DoseQuery,
    response: figures.DoseView,
  }),
  planPatch: post({
    path: '/api/patch-plans',
    tag: 'figures',
    summary: 'Size the plies of a planned repair and say what is wrong with it; nothing is recorded.',
    body: figures.PlanPatch,
    response: figures.PatchPlanView,
  }),
  readCure: get({
    path: '/api/parts/:part/cure',
    tag: 'figures',
    summary: 'How warm the layers of a part have lain since each ended.',
    query: figures.CureQuery,
    response: figures.CureView,
  }),
  setFlawLimits: post({
    path: '/api/flaw-limits',
    tag: 'rules',
    summary: 'Choose at which level flaws are accepted from then on.',
    body: flaws.SetFlawLimits,
    response: flaws.FlawLimitsReceipt,
  }),
  readFlawLimits: get({
    path: '/api/flaw-limits',
    tag: 'rules',
    summary: 'The acceptance table of flaws, with how sure each number is.',
    response: flaws.FlawLimitsView,
  }),
} as const;
