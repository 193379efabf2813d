import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { writeFile } from 'node:fs/promises';
import { AppModule } from './app.module.js';
import { serviceDataSource } from './platform/database/data-source.js';
import { openApiDocument } from './platform/http/openapi.js';

/** Writes the OpenAPI document to a file. It is made of the routes alone: nothing is started and no database is opened. */
export const writeOpenApi = async (file: string): Promise<void> => {
  const db = serviceDataSource('postgresql://nobody@127.0.0.1/nothing');
  const app = await NestFactory.create(AppModule.for({ db, dataDir: '' }), { logger: ['error', 'fatal'] });
  await writeFile(file, `${JSON.stringify(openApiDocument(app), null, 2)}\n`);
};
