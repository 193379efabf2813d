import { Module } from '@nestjs/common';
import { FillTank } from './fill-tank.js';
import { ListTanks } from './list-tanks.query.js';
import { RegisterTank } from './register-tank.js';
import { TanksController } from './tanks.controller.js';

/** Bulk tanks and their fills. */
@Module({ controllers: [TanksController], providers: [RegisterTank, FillTank, ListTanks] })
export class TanksModule {}
