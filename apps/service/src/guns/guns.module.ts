import { Module } from '@nestjs/common';
import { AmendHookUp } from './amend-hook-up.js';
import { GunsController } from './guns.controller.js';
import { HookUpGun } from './hook-up-gun.js';
import { ReadGun } from './read-gun.query.js';
import { SetGun } from './set-gun.js';

/** Spray and chopper guns: what feeds them, and how they are set. */
@Module({ controllers: [GunsController], providers: [HookUpGun, SetGun, ReadGun, AmendHookUp] })
export class GunsModule {}
