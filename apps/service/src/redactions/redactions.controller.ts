import { Body, Controller, Param, StreamableFile } from '@nestjs/common';
import { routes, type RedactPhoto as PhotoRequest, type RedactText as TextRequest } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ListRedactable } from './list-redactable.query.js';
import { RedactPhoto } from './redact-photo.js';
import { RedactText } from './redact-text.js';
import { ShowKeptOriginal } from './show-kept-original.query.js';

@Controller()
export class RedactionsController {
  constructor(
    private readonly listing: ListRedactable,
    private readonly redactText: RedactText,
    private readonly redactPhoto: RedactPhoto,
    private readonly original: ShowKeptOriginal,
  ) {}

  @Route(routes.listRedactable)
  list(@Param('number') number: string) {
    return this.listing.run(number);
  }

  @Route(routes.redactText)
  text(@Body({ schema: routes.redactText.body }) request: TextRequest) {
    return this.redactText.run(request);
  }

  @Route(routes.redactPhoto)
  photo(@Param('photo') photo: string, @Body({ schema: routes.redactPhoto.body }) request: PhotoRequest) {
    return this.redactPhoto.run(photo, request);
  }

  @Route(routes.showKeptOriginal)
  async kept(@Param('photo') photo: string): Promise<StreamableFile> {
    return new StreamableFile(await this.original.run(photo), { type: 'image/jpeg' });
  }
}
