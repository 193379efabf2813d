import { Controller, Param } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ReadPart } from './read-part.query.js';

@Controller()
export class PartsController {
  constructor(private readonly readPart: ReadPart) {}

  @Route(routes.readPart)
  read(@Param('part') part: string) {
    return this.readPart.run(part);
  }
}
