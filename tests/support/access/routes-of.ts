import type { Server } from 'node:http';

interface Layer {
  readonly route?: { readonly path: string; readonly methods: Readonly<Record<string, boolean>> };
}

/** A method and a path that a running service answers. */
export interface Answered {
  readonly method: string;
  readonly path: string;
}

/** Every route of the running service, by its own router, without the page that shows the API's document. */
export const routesOf = (server: Server): readonly Answered[] => {
  const [express] = server.listeners('request') as unknown as [{ router: { stack: readonly Layer[] } }];
  return express.router.stack
    .flatMap(({ route }) =>
      route ? Object.keys(route.methods).map((method) => ({ method: method.toUpperCase(), path: route.path })) : [],
    )
    .filter(({ method, path }) => !(method === 'GET' && /^\/api\/(docs|openapi\.json)/.test(path)));
};
