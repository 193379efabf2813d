import { Module } from '@nestjs/common';
import { TokensController } from './tokens.controller.js';
import { Tokens } from './tokens.js';

/** Tokens with which programs call the service. */
@Module({ controllers: [TokensController], providers: [Tokens] })
export class TokensModule {}
