import { Module } from '@nestjs/common';
import { PartsController } from './parts.controller.js';
import { ReadPart } from './read-part.query.js';

/** The page of a part: everything recorded of it. */
@Module({ controllers: [PartsController], providers: [ReadPart] })
export class PartsModule {}
