export { site, sitePages, type SiteCard, type SiteFile, type SiteOptions, type SitePage } from './site.js';
