import type { NextFunction, Request, Response } from 'express';
import { within } from './call.js';

/** Begins the call of one request: nobody is known yet. */
export const beginCall = (request: Request, response: Response, next: NextFunction): void => {
  within({ caller: null, route: null, http: { request, response } }, next);
};
