import { z } from 'zod';
import * as hulls from './hulls.js';
import * as models from './models.js';
import * as parts from './parts.js';
import * as people from './people.js';
import { get, post } from './route.js';

/** Models, molds, hulls and parts. */
export const boatRoutes = {
  registerModel: post({
    path: '/api/models',
    tag: 'models',
    summary: 'Register a model with the skins of its parts.',
    body: models.RegisterModel,
    response: people.RegisteredCode,
  }),
  listModels: get({
    path: '/api/models',
    tag: 'models',
    summary: 'List models with their published schedules.',
    response: z.array(models.ModelView),
  }),
  publishSchedule: post({
    path: '/api/models/:model/schedules',
    tag: 'models',
    summary: 'Publish a version of a laminate schedule; it never changes afterwards.',
    body: models.PublishSchedule,
    response: models.ScheduleReceipt,
  }),
  registerMold: post({
    path: '/api/molds',
    tag: 'models',
    summary: 'Register a mold.',
    body: models.RegisterMold,
    response: people.RegisteredCode,
  }),
  listMolds: get({
    path: '/api/molds',
    tag: 'models',
    summary: 'List molds with their pulls.',
    response: z.array(models.MoldView),
  }),
  startHull: post({
    path: '/api/hulls',
    tag: 'hulls',
    summary: 'Start a hull, with its hull molding in a mold.',
    body: hulls.StartHull,
    response: hulls.HullReceipt,
  }),
  listHulls: get({
    path: '/api/hulls',
    tag: 'hulls',
    summary: 'List hulls.',
    query: hulls.ListHullsQuery,
    response: hulls.HullPage,
  }),
  readHull: get({
    path: '/api/hulls/:number',
    tag: 'hulls',
    summary: 'One hull, by hull number or any HIN it ever had.',
    response: hulls.HullView,
  }),
  assignHin: post({
    path: '/api/hulls/:number/hins',
    tag: 'hulls',
    summary: 'Assign a HIN, or change it before it is affixed.',
    body: hulls.AssignHin,
    response: hulls.HinReceipt,
  }),
  recordLifeFact: post({
    path: '/api/hulls/:number/life',
    tag: 'hulls',
    summary: 'Record a fact in the life of the boat.',
    body: hulls.RecordLifeFact,
    response: hulls.LifeReceipt,
  }),
  releaseHull: post({
    path: '/api/hulls/:number/releases',
    tag: 'hulls',
    summary: 'Release the hull, or be told all that is in the way.',
    body: hulls.ReleaseHull,
    response: hulls.LifeReceipt,
  }),
  joinPart: post({
    path: '/api/hulls/:number/joints',
    tag: 'hulls',
    summary: 'Join a part to the hull.',
    body: parts.JoinPart,
    response: parts.MadeReceipt,
  }),
  startPart: post({
    path: '/api/parts',
    tag: 'parts',
    summary: 'Start a deck, liner, stringer grid or hatch in a mold.',
    body: parts.StartPart,
    response: parts.PartReceipt,
  }),
  readPart: get({
    path: '/api/parts/:part',
    tag: 'parts',
    summary: 'One part: its layers as scheduled and as made, defects and repairs.',
    response: parts.PartView,
  }),
} as const;
