import { Module } from '@nestjs/common';
import { ChangeSecret } from './change-secret.js';
import { DemoPins } from './demo-pins.js';
import { EndAccess } from './end-access.js';
import { FirstAdministrator } from './first-administrator.js';
import { FirstCodes } from './first-codes.js';
import { FindHere } from './here.js';
import { Sessions } from './sessions.js';
import { SignInController } from './sign-in.controller.js';
import { SignIn } from './sign-in.js';
import { Throttle } from './throttle.js';
import { ViewSession } from './view-session.query.js';

/** People signing in: by badge and PIN or passphrase, with a one-time code the first time. */
@Module({
  controllers: [SignInController],
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
  ],
})
export class SignInModule {}
