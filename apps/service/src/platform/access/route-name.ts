import { type Route, type RouteName, routes } from '@hull-record/contracts';

const NAMES = new Map<Route, string>(Object.entries(routes).map(([name, route]) => [route, name]));
const HANDLERS = new WeakMap<object, RouteName>();

/** Remembers which route of the table a method answers. */
export const nameHandler = (handler: object, route: Route): void => {
  const name = NAMES.get(route);
  if (name !== undefined) HANDLERS.set(handler, name as RouteName);
};

/** The route that a method answers, or null: then nobody may call it. */
export const routeOf = (handler: object): RouteName | null => HANDLERS.get(handler) ?? null;
