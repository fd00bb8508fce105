/** The script as one text, the same on every machine. */
export function bundleCardPage(): Promise<string>;
/** The module that holds the script and what a content security policy needs to know of it. */
export function cardScriptModule(script: string): string;
