import { Module } from '@nestjs/common';
import { ErasePhotoFiles } from './erase-photo-files.js';
import { ListRedactable } from './list-redactable.query.js';
import { RedactionsController } from './redactions.controller.js';
import { RedactPhoto } from './redact-photo.js';
import { RedactText } from './redact-text.js';
import { ShowKeptOriginal } from './show-kept-original.query.js';

/** Redacted copies of texts and photos that name or show an owner. */
@Module({
  controllers: [RedactionsController],
  providers: [RedactText, RedactPhoto, ListRedactable, ShowKeptOriginal, ErasePhotoFiles],
})
export class RedactionsModule {}
