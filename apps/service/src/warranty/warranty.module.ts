import { Module } from '@nestjs/common';
import { ListWarrantyTerms } from './list-warranty-terms.query.js';
import { SetWarrantyTerms } from './set-warranty-terms.js';
import { WarrantyController } from './warranty.controller.js';

/** Warranty terms by model and model year. */
@Module({ controllers: [WarrantyController], providers: [SetWarrantyTerms, ListWarrantyTerms] })
export class WarrantyModule {}
