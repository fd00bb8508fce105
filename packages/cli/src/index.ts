/** The command `quern` as functions, for those who start it inside another program. */
export { run } from './run.js';
export {
  defineCommand,
  RecipeError,
  UsageError,
  type Call,
  type Command,
  type ExitCode,
  type Option,
  type Options,
  type Values,
} from './command.js';
export { registry, type Registered } from './commands/registry.js';
export { nodeSystem } from './system/node-system.js';
export type { Sink, System } from './system/system.js';
