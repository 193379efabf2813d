import { Module } from '@nestjs/common';
import { ListDealers } from './list-dealers.query.js';
import { DealersController } from './dealers.controller.js';
import { RegisterDealer } from './register-dealer.js';

/** Registers and lists dealers. */
@Module({ controllers: [DealersController], providers: [RegisterDealer, ListDealers] })
export class DealersModule {}
