import type { NestExpressApplication } from '@nestjs/platform-express';
import type { NextFunction, Request, Response } from 'express';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** What is built is named after its content, so it never changes under its name. */
const FOR_EVER = { index: false, immutable: true, maxAge: '365d' } as const;
/** Addresses of the service itself, which finds them in any case of letters; what is not found there is no page. */
const NOT_PAGES = /^\/(api|health|assets)(\/|$)/i;

/**
 * Serves the built web app: its files as they are, and its one page at every address of a page.
 *
 * Browsers keep files that are named after their content, and ask anew for the page, which names them.
 *
 * @param timeZone IANA name of the plant's time zone, which the page shows times in
 */
export const serveWeb = (app: NestExpressApplication, webDir: string, timeZone: string): void => {
  const built = join(webDir, 'dist');
  const page = (_: Request, response: Response, next: NextFunction): void =>
    void sendPage(built, timeZone, response).catch(next);
  app.use('/index.html', page);
  app.useStaticAssets(join(built, 'assets'), { prefix: '/assets/', ...FOR_EVER });
  app.useStaticAssets(built, { index: false });
  app.use((request: Request, response: Response, next: NextFunction) =>
    isPage(request) ? page(request, response, next) : next(),
  );
};

const isPage = (request: Request): boolean =>
  ['GET', 'HEAD'].includes(request.method) &&
  !NOT_PAGES.test(request.path) &&
  request.accepts(['html', 'json']) === 'html';

const sendPage = async (built: string, timeZone: string, response: Response): Promise<void> => {
  const page = await readFile(join(built, 'index.html'), 'utf8');
  const zoned = page.replace(/(<meta name="plant-time-zone" content=")[^"]*/, (_, before: string) => before + timeZone);
  response.set('Cache-Control', 'no-cache').type('html').send(zoned);
};
