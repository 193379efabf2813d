import { Module } from '@nestjs/common';
import { EraseOwner } from './erase-owner.js';
import { ListOwners } from './list-owners.query.js';
import { OwnersController } from './owners.controller.js';
import { RegisterOwner } from './register-owner.js';

/** Owners of hulls: whom a notice has to reach. */
@Module({ controllers: [OwnersController], providers: [RegisterOwner, EraseOwner, ListOwners] })
export class OwnersModule {}
