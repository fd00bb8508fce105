/* The entry of the page. */
import { startService } from './page/client.js';
import { Desk } from './page/desk.js';
import { byId } from './page/dom.js';

async function main(): Promise<void> {
  const desk = new Desk(await startService());
  await desk.start();
}

main().catch((error: unknown) => {
  byId('notice').textContent = `The desk could not start: ${error instanceof Error ? error.message : String(error)}`;
});
