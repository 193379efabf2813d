import { Controller, Param, type StreamableFile } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { Route } from '../../../platform/http/route.js';
import { DrawHeldHulls } from './held-hulls.query.js';

@Controller()
export class HeldHullsController {
  constructor(private readonly draw: DrawHeldHulls) {}

  @Route(routes.heldHullsPaper)
  paper(@Param('hold') hold: string): Promise<StreamableFile> {
    return this.draw.pdf(hold);
  }

  @Route(routes.heldHullsSheet)
  sheet(@Param('hold') hold: string): Promise<StreamableFile> {
    return this.draw.csv(hold);
  }
}
