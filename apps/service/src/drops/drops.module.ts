import { Module } from '@nestjs/common';
import { ApportionDrop } from './apportion-drop.js';
import { DropsController } from './drops.controller.js';

/** What a tank, drum or gun lost, spread over what was sprayed. */
@Module({ controllers: [DropsController], providers: [ApportionDrop] })
export class DropsModule {}
