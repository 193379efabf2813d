import { Module } from '@nestjs/common';
import { Dispose } from './dispose.js';
import { DispositionsController } from './dispositions.controller.js';

/** What is done about things that are not as they should be, and concessions. */
@Module({ controllers: [DispositionsController], providers: [Dispose] })
export class DispositionsModule {}
