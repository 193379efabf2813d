import { Module } from '@nestjs/common';
import { CareForMold } from './care-for-mold.js';
import { MoldsTreated } from './molds-treated.query.js';
import { MoldsController } from './molds.controller.js';
import { ReadMold } from './read-mold.query.js';

/** The care of molds. */
@Module({ controllers: [MoldsController], providers: [CareForMold, ReadMold, MoldsTreated] })
export class MoldsModule {}
