import { Module } from '@nestjs/common';
import { HullMapController } from './hull-map.controller.js';
import { ListMappedDefects } from './list-mapped-defects.query.js';
import { ReadDefectMap } from './read-defect-map.query.js';

/** The hull map of many hulls: where on the skin of a model defects were found. */
@Module({ controllers: [HullMapController], providers: [ReadDefectMap, ListMappedDefects] })
export class HullMapModule {}
