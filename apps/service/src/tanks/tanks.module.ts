import { Module } from '@nestjs/common';
import { EmptyTank } from './empty-tank.js';
import { FillTank } from './fill-tank.js';
import { ListTanks } from './list-tanks.query.js';
import { RegisterTank } from './register-tank.js';
import { TanksController } from './tanks.controller.js';

/** Bulk tanks and their fills. */
@Module({ controllers: [TanksController], providers: [RegisterTank, FillTank, EmptyTank, ListTanks] })
export class TanksModule {}
