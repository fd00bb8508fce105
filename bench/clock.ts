import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compile } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import {
  awakeHours,
  buildNetwork,
  clockProblem,
  menuRequest,
  plainCalendar,
  search,
  solve,
  type PlanProblem,
} from '@quern/views';
import { judge } from '../tests/clock/judge.js';
import { smallKitchen } from '../tests/clock/kitchens.js';
import { solveByHighs } from '../tests/clock/mixed-integer.js';
import { inTurns, type Measured } from './measure.js';

const root = join(import.meta.dirname, '..');
const plenty = { steps: 1_000_000 };

/** The mixed-integer program is given so many seconds for the market day; it is said when that was not enough. */
const PATIENCE = 90;
/** Kitchens small enough for both, drawn at random; see tests/clock. */
const SMALL = 40;

/** Plans made to the proven best, beside a mixed-integer program (HiGHS) of the same problem. */
export async function clockSpeed(rounds: number, gate: boolean): Promise<Measured[]> {
  return [await marketDay(rounds, gate), await smallKitchens()];
}

/** Eight recipes, one oven, two cooks. */
async function marketDay(rounds: number, gate: boolean): Promise<Measured> {
  const problem = readMarketDay();
  const solved = solve(problem, plenty);
  const optimal = 'solution' in solved && solved.solution.quality.optimal;
  const { ours } = await inTurns({ ours: () => solve(problem, plenty) }, rounds);
  return {
    what: `clock: ${problem.dishes.length} recipes, ${problem.activities.length} steps, one oven, two cooks`,
    value: `${ours.toFixed(0)} ms, ${optimal ? 'proven optimal' : 'not proven'}${gate ? '' : `; ${beside(problem, ours)}`}`,
    goal: 'proven optimal in under 1000 ms',
    reached: optimal && ours < 1000,
  };
}

function readMarketDay(): PlanProblem {
  const path = 'examples/clock-market-day.quern';
  const read = (name: string): string => readFileSync(join(root, name), 'utf8');
  const compiled = compile(path, read(path), { read, foods: createFoodBook() });
  const [menu] = compiled.menus;
  const [kitchen] = compiled.kitchens;
  if (!menu || !kitchen) throw new Error(`${path} has no menu or no kitchen`);
  const calendar = plainCalendar(awakeHours(kitchen));
  const { value: problem } = clockProblem(menuRequest(menu, kitchen), { mode: 'ready', calendar });
  if (!problem) throw new Error(`${path} cannot be planned`);
  return problem;
}

/** The mixed-integer program in words: how many times as long it took, and whether its plan is worth the same. */
function beside(problem: PlanProblem, ours: number): string {
  // The program needs a choice for every step and every night: it is given the days that the plan lies in, not the weeks
  // that the clock looks at.
  const near = { ...problem, sleep: problem.sleep.filter(({ from, to }) => to > -4 * 1440 && from < 1440) };
  const { plan, milliseconds } = solveByHighs(near, undefined, PATIENCE);
  const times = (milliseconds / ours).toFixed(0);
  if (!plan) return `a mixed-integer program had no proof after ${PATIENCE} s, ${times} times as long`;
  const same = search(buildNetwork(problem, 'best'), plenty).found?.cost === judge(problem, plan).cost;
  return `a mixed-integer program took ${times} times as long for a plan ${same ? 'worth the same' : 'WORTH SOMETHING ELSE'}`;
}

async function smallKitchens(): Promise<Measured> {
  const problems = Array.from({ length: SMALL }, (_, seed) => smallKitchen(seed));
  const { ours, theirs } = await inTurns(
    {
      ours: () => problems.map((problem) => search(buildNetwork(problem, 'best'), plenty)),
      theirs: () => problems.map((problem) => solveByHighs(problem)),
    },
    1,
  );
  const value = theirs / ours;
  return {
    what: `clock: ${SMALL} small kitchens`,
    value: `${(ours / SMALL).toFixed(2)} ms each; a mixed-integer program takes ${value.toFixed(0)} times as long`,
    goal: 'no slower than the mixed-integer program',
    reached: value >= 1,
    ratio: { id: 'clock-against-mixed-integer', value, better: 'more' },
  };
}
