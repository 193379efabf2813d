import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from '@nestjs/swagger';
import { EXAMPLES, type Route, routes } from '@hull-record/contracts';
import { z } from 'zod';

const ABOUT =
  'Sign in by POST /api/sign-in and send its `csrf` back in the header x-hull-record-csrf with whatever is not GET; a program takes a token as `Authorization: Bearer`. ' +
  'A record names the badge that is signed in and its device: DESK where no device is enrolled. Then register people, a device, materials, a model with its ' +
  'schedule and molds; receive lots; start a hull and record its layers. ' +
  'Every record carries an id made by the client, a new one for each (the examples share one: put in your own): the same request again records nothing and gives the same receipt. ' +
  'Refusals are RFC 9457 problem details with a JSON pointer for each wrong field; a field that a request does not know is one.';

/**
 * A schema of contracts as OpenAPI, always as it is sent: a schema that both requests and answers carry is one component.
 *
 * Named schemas become components. Left to itself the converter would want the form after a transform, which has none.
 */
const toOpenApi = (schema: unknown): { schema: unknown; components: Record<string, unknown> } => {
  const {
    definitions,
    $schema: _,
    ...own
  } = z.toJSONSchema(schema as z.ZodType, { target: 'openapi-3.0', io: 'input' });
  return { schema: own, components: (definitions ?? {}) as Record<string, unknown> };
};

/** The OpenAPI document, made from the route table and the schemas in contracts. */
export const openApiDocument = (app: INestApplication): OpenAPIObject => {
  const about = new DocumentBuilder().setTitle('Hull Record').setDescription(ABOUT).setVersion('1').build();
  const options = { standardSchemaConverter: toOpenApi, autoTagControllers: false };
  const document = SwaggerModule.createDocument(app, about, options);
  for (const [name, example] of Object.entries(EXAMPLES))
    putExample(document, routes[name as keyof typeof routes], example);
  return document;
};

/** Shows an example request where the document describes the body. */
const putExample = (document: OpenAPIObject, route: Route, example: object): void => {
  const path = document.paths[route.path.replace(/:(\w+)/g, '{$1}')];
  const body = path?.[route.method === 'GET' ? 'get' : 'post']?.requestBody;
  const json = body && 'content' in body ? body.content['application/json'] : undefined;
  if (json) json.example = example;
};

/** Serves the document at /api/openapi.json and a page to read it at /api/docs. */
export const serveApiPage = (app: INestApplication): void => {
  SwaggerModule.setup('api/docs', app, () => openApiDocument(app), {
    jsonDocumentUrl: 'api/openapi.json',
    customSiteTitle: 'Hull Record API',
  });
};
