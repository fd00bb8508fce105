import { createConnection, BrowserMessageReader, BrowserMessageWriter } from 'vscode-languageserver/browser';
import { createFoodBook } from '@quern/foods';
import { SentFiles } from './files.js';
import { startServer } from './server.js';
import { VERSION } from './version.js';

/* The server in a worker of a browser. It has no disk: the page sends the files of the workspace. */

declare const self: Worker;

const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));
startServer(connection, {
  files: new SentFiles(),
  foods: createFoodBook,
  now: () => performance.now(),
  version: VERSION,
});
connection.listen();
