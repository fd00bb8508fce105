import { UsageError } from '../command.js';

const WORDS: Readonly<Record<string, { readonly says: string; readonly help?: string }>> = {
  ENOENT: { says: 'there is no such file or folder', help: 'check the spelling of the path' },
  EACCES: { says: 'permission is refused', help: 'change the permissions, or run as the owner' },
  EPERM: { says: 'the system does not allow it', help: 'change the permissions, or run as the owner' },
  EROFS: { says: 'the disk is read-only', help: 'choose a place that can be written to' },
  ENOSPC: { says: 'the disk is full', help: 'free some space and run the command again; no file was changed by half' },
  EDQUOT: {
    says: 'your share of the disk is used up',
    help: 'free some space and run the command again; no file was changed by half',
  },
  EISDIR: { says: 'it is a folder' },
  ENOTDIR: { says: 'a part of the path is not a folder' },
  ELOOP: { says: 'its links lead in a circle' },
  EMFILE: { says: 'too many files are open' },
  ENAMETOOLONG: { says: 'the name is too long' },
  EFBIG: { says: 'the file is too large for the disk' },
  EIO: { says: 'the disk does not answer' },
};

/** The error of a file operation as a mistake that is told in one line. `doing` is what was tried: 'read', 'write'. */
export function fileProblem(doing: string, path: string, error: unknown): UsageError {
  const { code, message } = error as NodeJS.ErrnoException;
  const known = code === undefined ? undefined : WORDS[code];
  return new UsageError(`cannot ${doing} ${path}: ${known?.says ?? message}`, known?.help);
}
