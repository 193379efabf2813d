import { Body, Controller, Param, UseFilters } from '@nestjs/common';
import { routes, type LinkOpenId } from '@hull-record/contracts';
import { RefusalPageFilter } from './refusal-page.filter.js';
import { Route } from '../../platform/http/route.js';
import { FinishOpenId } from './finish-open-id.js';
import { OpenIdLinks } from './open-id-links.js';
import { StartOpenId } from './start-open-id.js';

/** The sign-in of the office. A browser is at the first two by itself, so that refusals are pages there. */
@Controller()
export class OpenIdController {
  constructor(
    private readonly starting: StartOpenId,
    private readonly finishing: FinishOpenId,
    private readonly links: OpenIdLinks,
  ) {}

  @Route(routes.startOpenId)
  @UseFilters(RefusalPageFilter)
  start() {
    return this.starting.run();
  }

  @Route(routes.finishOpenId)
  @UseFilters(RefusalPageFilter)
  finish() {
    return this.finishing.run();
  }

  @Route(routes.listOpenIdLinks)
  list(@Param('badge') badge: string) {
    return this.links.list(badge);
  }

  @Route(routes.linkOpenId)
  link(@Param('badge') badge: string, @Body({ schema: routes.linkOpenId.body }) { subject }: LinkOpenId) {
    return this.links.link(badge, subject);
  }

  @Route(routes.unlinkOpenId)
  unlink(@Param('badge') badge: string, @Body({ schema: routes.unlinkOpenId.body }) { subject }: LinkOpenId) {
    return this.links.unlink(badge, subject);
  }
}
