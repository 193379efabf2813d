import { Module } from '@nestjs/common';
import { FitItem } from './fit-item.js';
import { FittedItemsController } from './fitted-items.controller.js';
import { ListFittedItems } from './list-fitted-items.query.js';
import { RemoveItem } from './remove-item.js';

/** Items with a serial number that are fitted to hulls. */
@Module({ controllers: [FittedItemsController], providers: [FitItem, RemoveItem, ListFittedItems] })
export class FittedItemsModule {}
