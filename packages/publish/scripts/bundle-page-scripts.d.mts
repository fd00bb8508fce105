export interface PageScript {
  readonly name: string;
  readonly source: string;
  readonly module: string;
  readonly what: string;
}
/** The scripts: what each is called in the code, where it comes from, and what it is. */
export const pageScripts: readonly PageScript[];
/** A script as one text, the same on every machine. */
export function bundlePageScript(entry: PageScript): Promise<string>;
/** The module that holds a script and what a content security policy needs to know of it. */
export function pageScriptModule(entry: PageScript, script: string): string;
