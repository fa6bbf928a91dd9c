import { defineConfig } from 'vitest/config';

/** Four kinds of evidence, four names (docs/decisions/0003): each is a project of its own. */
const sources = { resolve: { conditions: ['standstill-source', 'node'] } };
const rooms = '{packages,apps,tools,tests}';
const shared = { ...sources, ssr: sources };

export default defineConfig({
  test: {
    // Left to itself the runner keeps one core free, which on two cores is half of them.
    maxWorkers: '100%',
    projects: [
      {
        ...shared,
        test: {
          name: 'behavior',
          include: [`${rooms}/**/*.test.ts`],
          exclude: [
            '**/node_modules/**',
            '**/dist/**',
            '**/*.{law,pin,long}.test.ts',
            '**/*.browser.test.ts',
          ],
          setupFiles: ['tests/fixed-seed.ts'],
          testTimeout: 90_000,
        },
      },
      {
        ...shared,
        test: {
          name: 'law',
          include: [`${rooms}/**/*.law.test.ts`],
          exclude: ['**/node_modules/**', '**/dist/**'],
          setupFiles: ['tests/fixed-seed.ts'],
          testTimeout: 240_000,
        },
      },
      {
        ...shared,
        test: {
          name: 'pin',
          include: [`${rooms}/**/*.pin.test.ts`],
          exclude: ['**/node_modules/**', '**/dist/**'],
        },
      },
      { ...shared, test: { name: 'checks', include: ['checks/**/*.check.ts'] } },
      {
        ...shared,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.browser.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
      {
        ...shared,
        test: {
          name: 'long',
          include: [`${rooms}/**/*.long.test.ts`],
          exclude: ['**/node_modules/**', '**/dist/**'],
          testTimeout: 600_000,
        },
      },
    ],
  },
});
