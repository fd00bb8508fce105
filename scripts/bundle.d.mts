/** Makes the bundles of these names; all of them when none is given. */
export function bundle(names?: readonly string[]): Promise<void>;
/** Makes the command in another folder and gives the file to start. */
export function bundleCommand(folder: string): Promise<string>;
