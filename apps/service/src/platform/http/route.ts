import { applyDecorators, Get, Header, HttpCode, Post, Redirect } from '@nestjs/common';
import { ApiBody, ApiConsumes, ApiOperation, ApiParam, ApiResponse, ApiTags } from '@nestjs/swagger';
import { nameHandler } from '../access/route-name.js';
import { Problem, type Route as RouteOfTable } from '@hull-record/contracts';

/**
 * Binds a method to a route of the table in contracts: its path, its place in the OpenAPI document and its answers.
 *
 * A record is answered 201 when it is new and 200 when the same request came before (see ReceiptStatus).
 */
export const Route = (route: RouteOfTable): MethodDecorator => {
  const isRecord = route.method === 'POST' && route.response !== undefined && isReceipt(route.response);
  const verb = route.method === 'GET' ? Get(route.path) : Post(route.path);
  return applyDecorators(
    ((_target: object, _key: string | symbol, { value }: PropertyDescriptor) =>
      nameHandler(value as object, route)) as MethodDecorator,
    verb,
    HttpCode(isRecord ? 201 : 200),
    ...(route.redirects ? [Redirect()] : []),
    ApiTags(route.tag),
    ApiOperation({ summary: route.summary, operationId: operationOf(route) }),
    ...[...route.path.matchAll(/:(\w+)/g)].map(([, name]) =>
      ApiParam({ name: name as string, schema: { type: 'string' } }),
    ),
    ...answers(route, isRecord),
    ...(route.produces ? [Header('Content-Type', route.produces)] : []),
  );
};

/** The table's schema of a receipt has `replayed` among its fields. */
export const isReceipt = (schema: RouteOfTable['response']): boolean =>
  schema !== undefined && 'shape' in schema && 'replayed' in (schema.shape as object);

const operationOf = (route: RouteOfTable): string =>
  `${route.method.toLowerCase()}${route.path.replace(/[^\w]+(\w)/g, (_, letter: string) => letter.toUpperCase())}`;

const answers = (route: RouteOfTable, isRecord: boolean): MethodDecorator[] => {
  const done = {
    status: route.redirects ? 302 : isRecord ? 201 : 200,
    description: isRecord ? 'recorded' : 'answered',
  };
  const content = route.produces
    ? { content: { [route.produces.replace(/;.*$/, '')]: { schema: schemaOf(route.produces) } } }
    : { ...(route.response ? { standardSchema: route.response as never } : {}) };
  return [
    ApiResponse({ ...done, ...content }),
    ...(isRecord ? [ApiResponse({ status: 200, description: 'recorded before; the same receipt', ...content })] : []),
    ApiResponse({ status: '4XX', description: 'refused', standardSchema: Problem as never }),
  ];
};

/** Text is text; what else is not JSON comes as a file. */
const schemaOf = (media: string): { type: 'string'; format?: 'binary' } =>
  media.startsWith('text/') ? { type: 'string' } : { type: 'string', format: 'binary' };

/** Says in the OpenAPI document that a route takes a form with a JSON field and a file. */
export const TakesPhoto = (schema = 'AddPhoto'): MethodDecorator =>
  applyDecorators(
    ApiConsumes('multipart/form-data'),
    ApiBody({
      schema: {
        type: 'object',
        required: ['record', 'photo'],
        properties: {
          record: { type: 'string', description: `JSON of the schema ${schema}` },
          photo: { type: 'string', format: 'binary', description: 'JPEG, PNG or WebP' },
        },
      },
    }),
  );
