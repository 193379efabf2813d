import { Module } from '@nestjs/common';
import { VerifyController } from './verify.controller.js';

/** The whole database compared with its journal. */
@Module({ controllers: [VerifyController] })
export class VerifyModule {}
