import { Body, Controller, Param } from '@nestjs/common';
import { type CreateToken, routes } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { Tokens } from './tokens.js';

@Controller()
export class TokensController {
  constructor(private readonly tokens: Tokens) {}

  @Route(routes.createToken)
  create(@Body({ schema: routes.createToken.body }) request: CreateToken) {
    return this.tokens.create(request);
  }

  @Route(routes.listTokens)
  list() {
    return this.tokens.list();
  }

  @Route(routes.revokeToken)
  revoke(@Param('token') token: string) {
    return this.tokens.revoke(token);
  }
}
