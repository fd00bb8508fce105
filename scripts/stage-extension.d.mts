/** Makes everything that the extension holds and puts it into a folder, which is emptied first. */
export function stageExtension(stage: string): Promise<void>;
