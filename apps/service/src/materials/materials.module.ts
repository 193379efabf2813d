import { Module } from '@nestjs/common';
import { IssueDataSheet } from './issue-data-sheet.js';
import { ListDataSheets } from './list-data-sheets.query.js';
import { ListMaterials } from './list-materials.query.js';
import { MaterialsController } from './materials.controller.js';
import { RegisterMaterial } from './register-material.js';

/** Materials with their makers' data. */
@Module({
  controllers: [MaterialsController],
  providers: [RegisterMaterial, ListMaterials, IssueDataSheet, ListDataSheets],
})
export class MaterialsModule {}
