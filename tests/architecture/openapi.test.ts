import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { EXAMPLES, type Route, routes } from '@hull-record/contracts';
import { decodeHin } from '@hull-record/trade';
import { routesOf } from '../support/access/routes-of.js';
import { startService, type RunningService } from '../support/service.js';

interface Operation {
  readonly operationId: string;
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly example?: object }>> };
  readonly parameters?: readonly { readonly name: string; readonly in: string }[];
}

type Document = {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, unknown>> };
};

const table = Object.entries(routes) as unknown as readonly [keyof typeof routes, Route][];
const COMMITTED = 'apps/service/openapi.json';

let service: RunningService;
let document: Document;
beforeAll(async () => {
  service = await startService();
  document = (await (await fetch(`${service.url}/api/openapi.json`)).json()) as Document;
});
afterAll(() => service.close());

describe('the routes', () => {
  it('of the running service are those of the contracts, each once, and no others', () => {
    const promised = table.map(([, { method, path }]) => `${method} ${path}`);
    const answered = routesOf(service.server).map(({ method, path }) => `${method} ${path}`);
    expect(answered.sort()).toEqual(promised.sort());
  });

  it('of the document are those of the contracts, with every parameter of their paths', () => {
    const documented = Object.entries(document.paths).flatMap(([path, operations]) =>
      Object.entries(operations).map(([method, { parameters = [] }]) => {
        const named = parameters.filter((parameter) => parameter.in === 'path').map(({ name }) => name);
        return `${method.toUpperCase()} ${path} (${named.join(', ')})`;
      }),
    );
    const promised = table.map(([, { method, path }]) => {
      const named = [...path.matchAll(/:(\w+)/g)].map(([, name]) => name);
      return `${method} ${path.replace(/:(\w+)/g, '{$1}')} (${named.join(', ')})`;
    });
    expect(documented.sort()).toEqual(promised.sort());
  });
});

describe('the OpenAPI document', () => {
  it('that is committed is the one that the service gives; `npm run openapi` writes it', () => {
    expect(JSON.parse(readFileSync(COMMITTED, 'utf8'))).toEqual(document);
  });

  it('refers to nothing that it does not hold', () => {
    const named = [...JSON.stringify(document).matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)].map((m) => m[1]);
    expect(named.length).toBeGreaterThan(50);
    expect([...new Set(named)].filter((name) => !((name as string) in document.components.schemas))).toEqual([]);
  });

  it('has an operation id of its own for every operation', () => {
    const ids = Object.values(document.paths).flatMap((path) => Object.values(path).map((o) => o.operationId));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('shows an example for every body in JSON', () => {
    const lacking = Object.entries(document.paths).flatMap(([path, operations]) =>
      Object.values(operations)
        .map((operation) => operation.requestBody?.content['application/json'])
        .filter((json) => json !== undefined && json.example === undefined)
        .map(() => path),
    );
    expect(lacking).toEqual([]);
  });
});

describe('the example requests', () => {
  const bodies = table.filter(
    ([name, route]) => route.body && !['addPhoto', 'addLotPhoto', 'addUnidentifiedPhoto'].includes(name),
  );

  it('are there for every body', () => {
    expect(Object.keys(EXAMPLES).sort()).toEqual(bodies.map(([name]) => name).sort());
  });

  it.each(bodies)('%s is a valid request, with no field that its schema does not know', (name, route) => {
    const parsed = route.body?.safeParse(EXAMPLES[name]);
    expect(parsed?.error?.issues ?? []).toEqual([]);
    expect(parsed?.data).toMatchObject(EXAMPLES[name] as object);
  });

  it('that name a HIN name one whose format is right', () => {
    const hins = JSON.stringify(EXAMPLES).match(/TRZ\w+/g) ?? [];
    expect(hins).toHaveLength(3);
    for (const hin of hins) expect(decodeHin(hin)).toMatchObject({ valid: true });
  });
});
