import { Module } from '@nestjs/common';
import { ListMaterials } from './list-materials.query.js';
import { MaterialsController } from './materials.controller.js';
import { RegisterMaterial } from './register-material.js';

/** Materials with their makers' data. */
@Module({ controllers: [MaterialsController], providers: [RegisterMaterial, ListMaterials] })
export class MaterialsModule {}
