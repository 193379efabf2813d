import type { Role, RouteName } from '@hull-record/contracts';
import { may, WHO_MAY } from '@hull-record/contracts/who-may';
import { useQuery } from '@tanstack/react-query';
import { sessionQuery } from './queries.js';

/** Whether who is signed in here may call a route: what they may not is not offered. The service decides all the same. */
export const useMay = (): ((route: RouteName) => boolean) => {
  const { data } = useQuery(sessionQuery);
  return (route) => may(data?.person?.roles ?? null, route);
};

/** Whether it is still being asked who is signed in here: until that is told, nobody is refused anything. */
export const useAsksWhoIsHere = (): boolean => useQuery(sessionQuery).isPending;

/** The roles that may call a route. */
export const rolesFor = (route: RouteName): readonly Role[] => {
  const access = WHO_MAY[route];
  return typeof access === 'string' ? [] : access;
};
