/*
 * The service of the desk as a script of its own: a worker, or, where a page has been opened as a file and may not
 * start one, a script of the page. The food table is a script beside it, so that nothing has to be fetched.
 */
import { openFoodBook } from '@quern/foods';
import type { Question } from './protocol.js';
import { DeskService } from './service/desk-service.js';
import { serve, type Port } from './service/serve.js';

declare global {
  /** The food table, put there by foods.js. */
  var quernFoods: string | undefined;
  /** Where the page finds the service when there is no worker. */
  var quernService: ((port: MessagePort) => void) | undefined;
}

declare function importScripts(...addresses: readonly string[]): void;

function table(): string {
  const text = globalThis.quernFoods;
  if (text === undefined) throw new Error('the food table has not been loaded');
  return text;
}

if (typeof document === 'undefined') {
  const port = globalThis as unknown as Port;
  // Questions that come while the table is read wait their turn.
  const waiting: MessageEvent<Question>[] = [];
  port.onmessage = (event) => waiting.push(event);
  importScripts('foods.js');
  serve(new DeskService(openFoodBook(table())), port);
  for (const event of waiting) port.onmessage?.(event);
} else {
  globalThis.quernService = (port) => serve(new DeskService(openFoodBook(table())), port as unknown as Port);
}
