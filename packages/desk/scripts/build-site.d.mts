/** Builds the site into a folder, which is emptied first. */
export function buildSite(outdir: string): Promise<void>;
