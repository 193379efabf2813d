import chromium from '@sparticuz/chromium';
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium as driver, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';

/** The folder of the web app, to start a service with. */
export const WEB_DIR = fileURLToPath(new URL('../../apps/web', import.meta.url));

/** Bundles the web app where it is older than its sources. */
export const buildWeb = (): void => {
  execFileSync(process.execPath, [join(WEB_DIR, 'build.mjs')], { stdio: 'inherit' });
};

/** In one process, Chromium ends with its first closed context: fit for a function that runs once, not for a suite. */
const ONE_PROCESS = ['--single-process', '--no-zygote'];
/** These draw by a graphics card that is made up in software: twice the work for the processor, and the same page. */
const GRAPHICS = /^--(use-gl|use-angle|enable-unsafe-swiftshader|ignore-gpu-blocklist|in-process-gpu)/;
/** These take away protections that the page is tried under. */
const LAX = ['--disable-web-security', '--allow-running-insecure-content'];

const UNFIT = [...ONE_PROCESS, ...LAX];

/** Starts the Chromium that npm brought, or the one that CHROMIUM_PATH names. */
export const startBrowser = async (more: readonly string[] = []): Promise<Browser> =>
  driver.launch({
    executablePath: process.env['CHROMIUM_PATH'] ?? (await chromium.executablePath()),
    args: [...chromium.args.filter((arg) => !UNFIT.includes(arg) && !GRAPHICS.test(arg)), '--disable-gpu', ...more],
    headless: true,
  });

/** A page of its own, with everything it complained of: errors, what it wrote to the console, refused resources. */
export interface Watched {
  readonly page: Page;
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

export const openPage = async (browser: Browser, options: BrowserContextOptions = {}): Promise<Watched> => {
  const context = await browser.newContext({ timezoneId: 'America/New_York', ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.addInitScript(
    "document.addEventListener('securitypolicyviolation', (e) => console.error('CSP refused ' + e.violatedDirective + ' ' + e.blockedURI))",
  );
  return { page, complaints, close: () => context.close() };
};
