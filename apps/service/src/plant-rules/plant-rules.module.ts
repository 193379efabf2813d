import { Module } from '@nestjs/common';
import { PlantRulesController } from './plant-rules.controller.js';
import { ReadPlantRules } from './read-plant-rules.query.js';
import { SetPlantRules } from './set-plant-rules.js';

/** By which published rules a plant judges. */
@Module({ controllers: [PlantRulesController], providers: [SetPlantRules, ReadPlantRules] })
export class PlantRulesModule {}
