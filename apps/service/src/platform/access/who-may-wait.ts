import { isReceipt } from '../http/route.js';
import { type Role, type Route, type RouteName, routes, WHO_MAY } from '@hull-record/contracts';

const AT_STATIONS: readonly Role[] = ['receiving', 'laminator', 'shift lead', 'inspector', 'patcher'];

/** Whether an act is done at a station, where it may wait on a device until the network is back. */
export const mayWait = (name: RouteName): boolean => {
  const route: Route = routes[name];
  const access = WHO_MAY[name];
  return (
    route.method === 'POST' &&
    isReceipt(route.response) &&
    typeof access !== 'string' &&
    access.some((role) => AT_STATIONS.includes(role))
  );
};
