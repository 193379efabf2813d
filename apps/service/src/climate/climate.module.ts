import { Module } from '@nestjs/common';
import { ClimateController } from './climate.controller.js';
import { ImportClimate } from './import-climate.js';
import { ReadClimate } from './read-climate.query.js';

/** The climate of areas of the shop, as logged. */
@Module({ controllers: [ClimateController], providers: [ImportClimate, ReadClimate] })
export class ClimateModule {}
