import { Body, Controller, Param } from '@nestjs/common';
import {
  type ChangeSecret as ChangeRequest,
  routes,
  type SignIn as SignInRequest,
  type UseFirstCode,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ChangeSecret } from './change-secret.js';
import { EndAccess } from './end-access.js';
import { FirstCodes } from './first-codes.js';
import { SignIn } from './sign-in.js';
import { ViewSession } from './view-session.query.js';

@Controller()
export class SignInController {
  constructor(
    private readonly view: ViewSession,
    private readonly signIn: SignIn,
    private readonly codes: FirstCodes,
    private readonly change: ChangeSecret,
    private readonly ending: EndAccess,
  ) {}

  @Route(routes.readSession)
  session() {
    return this.view.run();
  }

  @Route(routes.signIn)
  arrive(@Body({ schema: routes.signIn.body }) request: SignInRequest) {
    return this.signIn.run(request);
  }

  @Route(routes.signOut)
  leave() {
    return this.signIn.out();
  }

  @Route(routes.useFirstCode)
  arriveFirst(@Body({ schema: routes.useFirstCode.body }) request: UseFirstCode) {
    return this.codes.use(request);
  }

  @Route(routes.changeSecret)
  changeSecret(@Body({ schema: routes.changeSecret.body }) request: ChangeRequest) {
    return this.change.run(request);
  }

  @Route(routes.giveFirstCode)
  giveCode(@Param('badge') badge: string) {
    return this.codes.give(badge);
  }

  @Route(routes.endSessions)
  endSessions(@Param('badge') badge: string) {
    return this.ending.run(badge);
  }
}
