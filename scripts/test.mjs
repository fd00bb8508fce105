// Everything that has to hold: types, lint, format, dead code, then the tests, then speed. All of it runs even when a part fails,
// so that one run says all there is to mend. The last line is 'N passed, N failed'.
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const bin = (name) => join(root, 'node_modules', name);
const reportPath = join(root, '.cache', 'vitest.json');

const checks = [
  { title: 'Types', args: [bin('typescript/bin/tsc'), '-p', 'tsconfig.check.json', '--pretty', 'false'] },
  { title: 'Lint', args: [bin('eslint/bin/eslint.js'), '.', '--cache', '--cache-location', '.cache/eslint'] },
  { title: 'Format', args: [bin('prettier/bin/prettier.cjs'), '--check', '--log-level', 'warn', '.'] },
  { title: 'Dead code', args: [bin('knip/bin/knip.js'), '--no-progress', '--no-config-hints'] },
];

const vitest = [
  bin('vitest/vitest.mjs'),
  'run',
  '--reporter=dot',
  '--reporter=json',
  `--outputFile.json=${reportPath}`,
];

/** Runs Node with these arguments; the output is kept, or shown as it comes. */
function run(args, show) {
  return new Promise((resolve) => {
    const started = Date.now();
    const child = spawn(process.execPath, args, { cwd: root, stdio: show ? 'inherit' : ['ignore', 'pipe', 'pipe'] });
    let output = '';
    child.stdout?.on('data', (part) => (output += part));
    child.stderr?.on('data', (part) => (output += part));
    child.on('error', (error) => resolve({ ok: false, output: String(error), seconds: 0 }));
    child.on('close', (code) => resolve({ ok: code === 0, output, seconds: (Date.now() - started) / 1000 }));
  });
}

/** Runs the checks two at a time, since each uses one core, and prints each as it ends. */
async function runChecks() {
  const waiting = [...checks];
  let failed = 0;
  const lane = async () => {
    for (let check = waiting.shift(); check !== undefined; check = waiting.shift()) {
      const { ok, output, seconds } = await run(check.args, false);
      console.log(`== ${check.title}: ${ok ? 'passed' : 'FAILED'} (${seconds.toFixed(1)} s)`);
      if (!ok) console.log(`${output.trimEnd()}\n`);
      if (!ok) failed++;
    }
  };
  await Promise.all([lane(), lane()]);
  return { passed: checks.length - failed, failed };
}

async function runTests() {
  console.log('== Tests');
  mkdirSync(dirname(reportPath), { recursive: true });
  rmSync(reportPath, { force: true });
  const { ok } = await run(vitest, true);
  const report = readReport();
  // A skipped test is a test that did not pass, and a run that failed for another reason (a file that does not load) is a failure.
  const failed = report.numFailedTests + report.numPendingTests + report.numTodoTests;
  return { passed: report.numPassedTests, failed: ok ? failed : Math.max(1, failed) };
}

function readReport() {
  try {
    return JSON.parse(readFileSync(reportPath, 'utf8'));
  } catch {
    return { numFailedTests: 0, numPendingTests: 0, numTodoTests: 0, numPassedTests: 0 };
  }
}

/** Ratios against their baseline, alone on the machine so that nothing else is measured. */
async function runSpeed() {
  console.log('== Speed');
  const { ok } = await run([join('scripts', 'bench.mjs'), '--gate'], true);
  return { passed: ok ? 1 : 0, failed: ok ? 0 : 1 };
}

const fromChecks = await runChecks();
const fromTests = await runTests();
const fromSpeed = await runSpeed();
const passed = fromChecks.passed + fromTests.passed + fromSpeed.passed;
const failed = fromChecks.failed + fromTests.failed + fromSpeed.failed;
console.log(
  `\n${checks.length + 1} checks (types, lint, format, dead code, speed): ${fromChecks.passed + fromSpeed.passed} passed, ${fromChecks.failed + fromSpeed.failed} failed`,
);
console.log(`${fromTests.passed + fromTests.failed} tests: ${fromTests.passed} passed, ${fromTests.failed} failed`);
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
