import type { TextEdit } from '@quern/text';

/** Edits of one file, made all at once. */
export interface FileEdits {
  readonly file: string;
  readonly edits: readonly TextEdit[];
  /** The file is new: the edits fill it. */
  readonly create?: true;
}
