/** The language server: the editor answers over the protocol, for Node and for a worker in a browser. */
export { startServer, type Environment } from './server.js';
export { SentFiles, type Files } from './files.js';
export { page, type CompareRequest, type PageAnswer, type PageKind, type PageRequest } from './pages.js';
