import { Controller, Param, type StreamableFile } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { Route } from '../../../platform/http/route.js';
import { NoticePapers } from './notice-papers.query.js';

@Controller()
export class NoticePapersController {
  constructor(private readonly papers: NoticePapers) {}

  @Route(routes.noticeLetters)
  letters(@Param('notice') notice: string): Promise<StreamableFile> {
    return this.papers.letters(notice);
  }

  @Route(routes.mailMerge)
  merge(@Param('notice') notice: string): Promise<StreamableFile> {
    return this.papers.mailMerge(notice);
  }

  @Route(routes.initialReport)
  initial(@Param('notice') notice: string): Promise<StreamableFile> {
    return this.papers.initial(notice);
  }

  @Route(routes.followUpReport)
  followUp(@Param('notice') notice: string): Promise<StreamableFile> {
    return this.papers.followUp(notice);
  }
}
