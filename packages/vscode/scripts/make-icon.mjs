// Draws media/icon.png from media/icon.svg with a real browser, at the size that the editor asks for.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { root } from '../../../scripts/run-ts.mjs';

const media = join(root, 'packages', 'vscode', 'media');
// The one the machine has; CHROMIUM names another.
const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
const page = await browser.newPage({ viewport: { width: 128, height: 128 }, deviceScaleFactor: 2 });
const svg = readFileSync(join(media, 'icon.svg'), 'utf8');
await page.setContent(`<style>body{margin:0;background:transparent}svg{display:block}</style>${svg}`);
writeFileSync(join(media, 'icon.png'), await page.screenshot({ omitBackground: true }));
await browser.close();
