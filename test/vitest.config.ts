import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  // Tests see the code as it is written: no plug-ins, no path aliases.
  cacheDir: 'node_modules/.vite',
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    exclude: ['test/e2e/**'],
    environment: 'node',
    setupFiles: ['test/fixed-seed.ts'],
    // The code keeps no state outside its functions, so test files can share what has been loaded. It halves the time.
    pool: 'threads',
    isolate: false,
    // A slow machine must not turn a right answer into a failure.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    benchmark: { include: ['test/bench/**/*.bench.ts'] },
    // Figures and messages must not hang on where the machine stands.
    env: { TZ: 'UTC', LC_ALL: 'C.UTF-8' },
  },
});
