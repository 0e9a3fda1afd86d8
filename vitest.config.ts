import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/{core,published,regression,properties,structure,components}/**/*.test.ts'],
    environment: 'node',
  },
});
