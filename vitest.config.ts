import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/{core,published,regression,properties,fuzz,structure,components}/**/*.test.ts'],
    environment: 'node',
    // No test changes a module for the others, so a worker may go on to the next file: five times as fast.
    isolate: false,
    // Generous, for machines that do other work meanwhile; speed is measured in tests/bench.
    testTimeout: 30_000,
  },
});
