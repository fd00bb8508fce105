// What the tests in real editors share: commands that have to work, a browser's tab, and the steps that a cook would take
// in Visual Studio Code, wherever it runs.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { chromium } from 'playwright-core';

/** Runs a command to its end; one that fails throws with what it said. */
export function run(command, args, cwd) {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: 'utf8', timeout: 600_000 });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}\n${stdout}${stderr}`);
}

export const launch = () =>
  chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-dev-shm-usage'],
  });

/** A tab of the browser with an editor in it. */
export class EditorTab {
  /** What was seen, step by step. */
  outcomes = [];

  /**
   * @param where how the steps are told, 'Visual Studio Code'
   * @param shots the folder for a picture after each step
   */
  constructor(page, where, shots) {
    this.page = page;
    this.where = where;
    this.shots = shots;
  }

  /** A step that does not come about fails with what stands there instead. */
  async see(what, act) {
    let told = '';
    try {
      await act(this.page);
    } catch (error) {
      told = String(error).slice(0, 500);
    }
    this.outcomes.push({ what: `${this.where}: ${what}`, ok: told === '', told });
    const picture = `${String(this.outcomes.length)}-${what.replace(/\W+/g, '-')}.png`;
    await this.page.screenshot({ path: join(this.shots, picture) });
  }

  opensRecipe(file) {
    return this.see('the file opens as a recipe', async (page) => {
      await page.locator('.explorer-folders-view .monaco-list-row', { hasText: file }).dblclick();
      await page.locator('.monaco-editor .view-lines .view-line').first().waitFor();
      await page.getByText('Quern', { exact: true }).first().waitFor();
    });
  }

  hovers(slip) {
    return this.see('hover with the message', async (page) => {
      const box = await page.locator('.squiggly-error').first().boundingBox();
      await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
      await page.locator('.monaco-hover .hover-contents', { hasText: slip }).first().waitFor();
    });
  }

  mends(slip, meant) {
    return this.see('a quick fix mends it', async (page) => {
      await page.keyboard.press('Escape');
      await page
        .locator('.view-line', { hasText: slip })
        .first()
        .click({ position: { x: 40, y: 8 } });
      await page.keyboard.press('Control+.');
      await page.locator('.action-widget', { hasText: `Write “${meant}”` }).waitFor();
      await page.keyboard.press('Enter');
      await page.locator('.view-line', { hasText: meant }).first().waitFor();
      await page.locator('.squiggly-error').first().waitFor({ state: 'detached' });
    });
  }

  showsCard(title, before = async () => undefined) {
    return this.see('the card stands beside the file', async (page) => {
      await before(page);
      await page.keyboard.press('F1');
      await page.keyboard.type('Quern: Show the Card');
      await page.locator('.quick-input-list .monaco-list-row', { hasText: 'Show the Card' }).first().click();
      const outer = page.frameLocator('iframe.webview.ready');
      await outer.frameLocator('iframe').getByRole('heading', { name: title }).first().waitFor();
    });
  }
}
