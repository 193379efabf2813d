import { Body, Controller, Param } from '@nestjs/common';
import { routes, type EraseOwner as EraseRequest, type RegisterOwner as OwnerRequest } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { EraseOwner } from './erase-owner.js';
import { ListOwners } from './list-owners.query.js';
import { RegisterOwner } from './register-owner.js';

@Controller()
export class OwnersController {
  constructor(
    private readonly registerOwner: RegisterOwner,
    private readonly eraseOwner: EraseOwner,
    private readonly list: ListOwners,
  ) {}

  @Route(routes.registerOwner)
  register(@Param('number') number: string, @Body({ schema: routes.registerOwner.body }) request: OwnerRequest) {
    return this.registerOwner.run(number, request);
  }

  @Route(routes.listOwners)
  owners(@Param('number') number: string) {
    return this.list.run(number);
  }

  @Route(routes.eraseOwner)
  erase(@Param('owner') owner: string, @Body({ schema: routes.eraseOwner.body }) request: EraseRequest) {
    return this.eraseOwner.run(owner, request);
  }
}
