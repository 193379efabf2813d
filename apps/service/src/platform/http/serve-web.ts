import type { NestExpressApplication } from '@nestjs/platform-express';
import type { NextFunction, Request, Response } from 'express';
import compressed from 'express-static-gzip';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** What is built is named after its content, so it never changes under its name. */
const FOR_EVER = { immutable: true, maxAge: '365d' } as const;
/** Beside a file lie its compressed copies, where they are smaller: a browser gets the one that it takes. */
const COMPRESSED = { index: false, enableBrotli: true, orderPreference: ['br', 'gzip'] };
/** Addresses of the service itself, which finds them in any case of letters; what is not found there is no page. */
const NOT_PAGES = /^\/(api|health|assets)(\/|$)/i;

/**
 * Serves the built web app: its files as they are, and its one page at every address of a page.
 *
 * Files travel compressed as they were built; answers of the service, which may hold secrets, never do.
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
  app.use('/assets/', compressed(join(built, 'assets'), { ...COMPRESSED, serveStatic: FOR_EVER }));
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
