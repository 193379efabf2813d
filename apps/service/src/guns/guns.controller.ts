import { Body, Controller, Param } from '@nestjs/common';
import { routes, type HookUpGun as HookUpRequest, type SetGun as SetRequest } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { HookUpGun } from './hook-up-gun.js';
import { ReadGun } from './read-gun.query.js';
import { SetGun } from './set-gun.js';

@Controller()
export class GunsController {
  constructor(
    private readonly hookUpGun: HookUpGun,
    private readonly setGun: SetGun,
    private readonly readGun: ReadGun,
  ) {}

  @Route(routes.hookUpGun)
  hookUp(@Param('gun') gun: string, @Body({ schema: routes.hookUpGun.body }) request: HookUpRequest) {
    return this.hookUpGun.run(gun, request);
  }

  @Route(routes.setGun)
  set(@Param('gun') gun: string, @Body({ schema: routes.setGun.body }) request: SetRequest) {
    return this.setGun.run(gun, request);
  }

  @Route(routes.readGun)
  read(@Param('gun') gun: string) {
    return this.readGun.run(gun);
  }
}
