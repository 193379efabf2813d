import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from '@nestjs/swagger';

const ABOUT =
  'Every record carries an id made by the client: the same request again records nothing and gives the same receipt. ' +
  'Refusals are RFC 9457 problem details with a JSON pointer for each wrong field.';

/** The OpenAPI document, made from the route table and the schemas in contracts. */
export const openApiDocument = (app: INestApplication): OpenAPIObject =>
  SwaggerModule.createDocument(
    app,
    new DocumentBuilder().setTitle('Hull Record').setDescription(ABOUT).setVersion('1').build(),
  );

/** Serves the document at /api/openapi.json and a page to read it at /api/docs. */
export const serveApiPage = (app: INestApplication): void => {
  SwaggerModule.setup('api/docs', app, () => openApiDocument(app), {
    jsonDocumentUrl: 'api/openapi.json',
    customSiteTitle: 'Hull Record API',
  });
};
