import { UsageError } from '../command.js';

/** One of several parts of an archive. */
export interface Shard {
  readonly part: number;
  readonly of: number;
}

/** Reads `3/16`. @throws UsageError when it is not a part of a whole. */
export function readShard(text: string): Shard {
  const [, part = '', of = ''] = /^(\d{1,6})\/(\d{1,6})$/.exec(text) ?? [];
  const shard = { part: Number(part), of: Number(of) };
  if (part === '' || shard.part < 1 || shard.part > shard.of) {
    throw new UsageError(
      `--shard: “${text}” is not a part of a whole`,
      'write it like 3/16: the third of sixteen parts',
    );
  }
  return shard;
}

/**
 * Whether a file belongs to a part: decided by its path alone (FNV-1a, 32 bits), so that a new file moves no other and
 * every part keeps its cache.
 */
export function isInShard(path: string, { part, of }: Shard): boolean {
  let sum = 0x811c9dc5;
  for (const byte of Buffer.from(path, 'utf8')) sum = Math.imul(sum ^ byte, 0x01000193) >>> 0;
  return sum % of === part - 1;
}
