/** The desk without its page: the service that answers the page's questions, and links that hold a recipe. */
export { DeskService } from './service/desk-service.js';
export { serve, type Port } from './service/serve.js';
export * from './protocol.js';
export { isPlainPath, MOST_LETTERS, packFiles, unpackFiles, type SharedFile, type Unpacked } from './share.js';
