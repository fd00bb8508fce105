export * from './basket-data.js';
export { basket, type BasketOptions, type BasketRequest } from './basket.js';
export { readPackageSize, type PackageSize } from './package-size.js';
