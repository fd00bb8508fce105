export { atomFeed, siteMap, type FeedEntry, type FeedOptions } from './feed.js';
