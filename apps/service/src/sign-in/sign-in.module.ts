import { Module } from '@nestjs/common';
import { ChangeSecret } from './change-secret.js';
import { DemoPins } from './demo-pins.js';
import { EndAccess } from './end-access.js';
import { FirstAdministrator } from './first-administrator.js';
import { FirstCodes } from './first-codes.js';
import { FindHere } from './here.js';
import { BegunSignIns } from './open-id/begun.js';
import { FinishOpenId } from './open-id/finish-open-id.js';
import { OpenIdController } from './open-id/open-id.controller.js';
import { OpenIdLinks } from './open-id/open-id-links.js';
import { Provider } from './open-id/provider.js';
import { StartOpenId } from './open-id/start-open-id.js';
import { Sessions } from './sessions.js';
import { SignInController } from './sign-in.controller.js';
import { SignIn } from './sign-in.js';
import { Throttle } from './throttle.js';
import { ViewSession } from './view-session.query.js';

/** People signing in: by badge and PIN or passphrase, with a one-time code the first time; or by the office. */
@Module({
  controllers: [SignInController, OpenIdController],
  providers: [
    SignIn,
    Sessions,
    FindHere,
    Throttle,
    ViewSession,
    FirstCodes,
    ChangeSecret,
    EndAccess,
    FirstAdministrator,
    DemoPins,
    ...[Provider, BegunSignIns, OpenIdLinks, StartOpenId, FinishOpenId],
  ],
})
export class SignInModule {}
