import { Module } from '@nestjs/common';
import { Correct } from './correct.js';
import { CorrectionsController } from './corrections.controller.js';
import { ReadVersions } from './read-versions.query.js';

/** Corrections: a new fact that names the old one and the reason. */
@Module({ controllers: [CorrectionsController], providers: [Correct, ReadVersions] })
export class CorrectionsModule {}
