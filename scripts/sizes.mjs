// Measures everything that is given to people and makes docs/sizes.md anew: `npm run sizes`.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { root } from './run-ts.mjs';

const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
const args = [vitest, 'run', 'tests/packages/packages.test.ts', '-t', 'sizes'];
const { status } = spawnSync(process.execPath, args, {
  cwd: root,
  stdio: 'inherit',
  env: { ...process.env, UPDATE: '1' },
});
process.exitCode = status ?? 1;
