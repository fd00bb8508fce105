import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkArchive } from './archive.js';
import { checkSpeed } from './check.js';
import { clockSpeed } from './clock.js';
import { editorSpeed } from './editor.js';
import { growth } from './growth.js';
import type { Measured } from './measure.js';
import { parseSpeed } from './parse.js';
import { coldStart } from './start.js';

const root = join(import.meta.dirname, '..');
const baselinePath = join(import.meta.dirname, 'baseline.json');

/** How much worse than its baseline a ratio may be: machines and moments differ, a lost order of magnitude does not hide. */
const noise = 2.5;

interface Options {
  /** Compare with the baseline, on fewer recipes and in fewer rounds. */
  readonly gate: boolean;
  /** Write the baseline. */
  readonly save: boolean;
}

/** Measures everything, prints it, and gives the exit code. */
export async function bench({ gate, save }: Options): Promise<number> {
  const folder = join(root, '.cache', 'bench');
  mkdirSync(folder, { recursive: true });
  const command = join(root, 'packages', 'cli', 'dist', 'bundle', 'quern.mjs');
  const rounds = gate ? 3 : 9;
  const all: Measured[] = [
    ...(await parseSpeed(gate ? 100 : 1000, rounds)),
    ...(await checkSpeed(gate ? 100 : 500, rounds)),
    ...(await growth(rounds)),
    ...(await clockSpeed(rounds, gate)),
    ...(await editorSpeed(join(root, 'packages', 'server', 'dist', 'quern-server.cjs'), gate)),
    ...(await coldStart(command, folder, gate ? 5 : 15)),
    ...checkArchive(command, folder, gate ? 500 : 10_000),
  ];
  rmSync(folder, { recursive: true });
  for (const { what, value, goal, reached } of all)
    console.log(`${reached ? 'reached' : 'MISSED '} ${what}: ${value} (goal: ${goal})`);
  if (save) saveBaseline(all);
  return gate ? compareWithBaseline(all) : 0;
}

function saveBaseline(all: readonly Measured[]): void {
  const ratios = all.flatMap(({ ratio }) => (ratio ? [[ratio.id, Number(ratio.value.toFixed(3))] as const] : []));
  writeFileSync(baselinePath, `${JSON.stringify(Object.fromEntries(ratios), null, 2)}\n`);
}

/** 1 when a ratio has become worse than noise explains, or has no baseline. */
function compareWithBaseline(all: readonly Measured[]): number {
  const baseline = JSON.parse(readFileSync(baselinePath, 'utf8')) as Readonly<Record<string, number>>;
  let worse = 0;
  for (const { ratio } of all) {
    if (ratio === undefined) continue;
    const before = baseline[ratio.id];
    const change =
      before === undefined ? Infinity : ratio.better === 'less' ? ratio.value / before : before / ratio.value;
    if (change <= noise) continue;
    worse++;
    console.error(`${ratio.id} is ${ratio.value.toFixed(2)}; it was ${before ?? 'not measured'}`);
  }
  return worse === 0 ? 0 : 1;
}
