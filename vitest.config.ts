import { defineConfig } from 'vitest/config';

export default defineConfig({
  // Tests read the sources of the workspace, never a stale build.
  resolve: { conditions: ['@quern/source'] },
  ssr: { resolve: { conditions: ['@quern/source'] } },
  test: {
    include: ['packages/*/src/**/*.test.ts', 'tests/**/*.test.ts'],
    testTimeout: 30_000,
    pool: 'threads',
  },
});
