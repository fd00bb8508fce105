import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { commandHelp } from '../../packages/cli/src/help.js';
import { registry } from '../../packages/cli/src/commands/registry.js';
import { root } from '../sheet/recipes.js';

/* The manual shows the help of every command as it is. UPDATE=1 writes it anew. */

const MARK = '<!-- made from the commands themselves: UPDATE=1 npx vitest run tests/cli/manual.test.ts -->\n';

test('docs/cli.md shows each command as its help tells it', async () => {
  const path = join(root, 'docs', 'cli.md');
  const page = readFileSync(path, 'utf8');
  const [before = '', after] = page.split(MARK);
  expect(after).toBeDefined();
  const parts = await Promise.all(
    registry.map(
      async ({ name, summary, load }) =>
        `\n### quern ${name}\n\n\`\`\`text\n${commandHelp(name, summary, await load())}\`\`\`\n`,
    ),
  );
  const wanted = before + MARK + parts.join('');
  if (process.env['UPDATE'] === '1') writeFileSync(path, wanted);
  expect(readFileSync(path, 'utf8')).toBe(wanted);
});
