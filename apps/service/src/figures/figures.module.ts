import { Module } from '@nestjs/common';
import { FiguresController } from './figures.controller.js';
import { ReadCure } from './read-cure.query.js';
import { ReadDose } from './read-dose.query.js';

/** Figures worked out by the rules of the trade for whoever plans: they record nothing. */
@Module({ controllers: [FiguresController], providers: [ReadDose, ReadCure] })
export class FiguresModule {}
