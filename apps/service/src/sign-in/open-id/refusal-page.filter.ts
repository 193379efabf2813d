import { type ArgumentsHost, Catch } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import type { Request, Response } from 'express';
import { plainPage } from '../../platform/http/plain-page.js';
import { ProblemFilter } from '../../platform/http/problem.filter.js';

/** Makes an error a page where a browser asks for one, and problem details for everybody else. */
@Catch()
export class RefusalPageFilter extends ProblemFilter {
  override catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    if (http.getRequest<Request>().accepts(['json', 'html']) !== 'html') return super.catch(error, host);
    const { status, title, detail } = this.told(error);
    const page = plainPage({
      title: 'Not signed in',
      lines: [detail ?? title],
      links: [
        { to: routes.startOpenId.path, text: 'Begin again' },
        { to: '/', text: 'Go to Hull Record' },
      ],
    });
    http.getResponse<Response>().status(status).type('html').send(page);
  }
}
