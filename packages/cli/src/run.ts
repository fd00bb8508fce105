import { nearest } from '@quern/text';
import { listOf, readArguments } from './arguments.js';
import { RecipeError, UsageError, type ExitCode } from './command.js';
import { registry } from './commands/registry.js';
import { commandHelp, generalHelp } from './help.js';
import { paintFor, wantsColour } from './system/paint.js';
import { plain } from './system/plain.js';
import type { System } from './system/system.js';

/** Runs a command line (without `node quern`) and gives the exit code. Mistakes are told on the error stream. */
export async function run(args: readonly string[], system: System): Promise<ExitCode> {
  try {
    return await dispatch(args, system);
  } catch (error) {
    return tell(error, system);
  }
}

async function dispatch(args: readonly string[], system: System): Promise<ExitCode> {
  const [first, ...rest] = args;
  if (first === undefined || first === '--help' || first === '-h' || (first === 'help' && rest.length === 0)) {
    // Without a command nothing was done: help is shown, and a script is told so.
    (first === undefined ? system.err : system.out).write(generalHelp());
    return first === undefined ? 2 : 0;
  }
  if (first === '--version' || first === '-V') {
    system.out.write(`quern ${system.version}\n`);
    return 0;
  }
  return first === 'help' ? call(rest[0] ?? '', ['--help'], system) : call(first, rest, system);
}

async function call(name: string, args: readonly string[], system: System): Promise<ExitCode> {
  const registered = registry.find((one) => one.name === name);
  if (!registered) {
    const near = nearest(
      name,
      registry.map((one) => one.name),
    );
    const help = near.length > 0 ? `did you mean ${listOf(near)}?` : 'quern --help lists them';
    throw new UsageError(`there is no command “${name}”`, help);
  }
  const command = await registered.load();
  if (args.includes('--help') || args.includes('-h')) {
    system.out.write(commandHelp(name, registered.summary, command));
    return 0;
  }
  const { values, files } = readArguments(args, command.options);
  const colour = wantsColour(values.color, system.out, system.environment);
  return command.run({ files, options: values, system: { ...system, colour } });
}

/** An error in one line, with the way out; anything not foreseen is a fault of ours and is shown whole. */
function tell(error: unknown, system: System): ExitCode {
  const colour = wantsColour(undefined, system.err, system.environment);
  const paint = paintFor({ colour });
  if (error instanceof UsageError || error instanceof RecipeError) {
    const help = error.help === undefined ? '' : `\nway out: ${plain(error.help)}`;
    system.err.write(`${paint.error('quern:')} ${plain(error.message)}${help}\n`);
    return error instanceof RecipeError ? 1 : 2;
  }
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
  system.err.write(`${paint.error('quern:')} this is a fault in quern itself, please report it:\n${text}\n`);
  return 2;
}
