import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';
import packed from '@sparticuz/chromium';

/** Where systems keep a Chromium of their own. */
const INSTALLED = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** A real Chromium without a window: the machine's own, else the one that npm brought along. */
export async function launchBrowser(): Promise<Browser> {
  const named = process.env['CHROMIUM'];
  const installed = named ?? INSTALLED.find((path) => existsSync(path));
  if (installed !== undefined) {
    return chromium.launch({ executablePath: installed, args: ['--no-sandbox', '--disable-dev-shm-usage'] });
  }
  return chromium.launch({ executablePath: await packed.executablePath(), args: [...packed.args] });
}
