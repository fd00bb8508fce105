import { parseSpeed } from './parse.js';
import { growth } from './growth.js';
import type { Measured } from './measure.js';

export async function bench(options: { readonly gate: boolean; readonly save: boolean }): Promise<number> {
  const rounds = options.gate ? 3 : 9;
  const all: Measured[] = [...(await parseSpeed(300, rounds)), ...(await growth(rounds))];
  for (const { what, value, goal, reached } of all) console.log(`${reached ? 'reached' : 'MISSED '}  ${what}: ${value} (goal: ${goal})`);
  return 0;
}
