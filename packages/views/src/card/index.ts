export * from './card-data.js';
