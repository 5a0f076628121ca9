import { defineConfig } from 'vitest/config';
import whole from './vitest.config.ts';

/** The tests that judge changed laws: those of physics and finance alone, so that thousands of changes can be tried. */
export default defineConfig({
  ...whole,
  test: {
    ...whole.test,
    include: ['test/{physics,finance}/**/*.test.ts', 'test/reference/{physics,money}.test.ts'],
  },
});
