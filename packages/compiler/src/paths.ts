/**
 * The path that `use … from PATH` means, seen from a file; both with `/`. A path that is absolute, a web address, names
 * a drive, or leaves the folder in which the host's paths begin is refused.
 * @returns undefined when the path is refused.
 */
export function resolvePath(from: string, path: string): string | undefined {
  if (path === '' || /^[/\\]|^[a-z][a-z0-9+.-]*:|\\|\0/i.test(path)) return undefined;
  const folder = from.split('/').slice(0, -1);
  for (const step of path.split('/')) {
    if (step === '' || step === '.') continue;
    if (step !== '..') folder.push(step);
    // A host that works on absolute paths keeps its own root; here only the folders named in `from` can be left.
    else if (folder.length === 0 || folder.at(-1) === '') return undefined;
    else folder.pop();
  }
  return folder.join('/');
}
