import { defineConfig } from '@playwright/test';
import { findChromium } from '../../.tools/chromium.mjs';

const port = Number(process.env.E2E_PORT ?? 4319);
const origin = `http://127.0.0.1:${port}`;

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.spec.ts',
  outputDir: '../../.test-results',
  forbidOnly: Boolean(process.env.CI),
  retries: 0,
  workers: 1,
  // A slow machine must not turn a right answer into a failure.
  timeout: 180_000,
  expect: { timeout: 45_000 },
  reporter: 'list',
  use: {
    baseURL: `${origin}/`,
    locale: 'en-US',
    timezoneId: 'UTC',
    viewport: { width: 1280, height: 800 },
    screenshot: 'only-on-failure',
    permissions: ['clipboard-read', 'clipboard-write'],
    // Each test begins with an empty browser; fetching the whole site into it once more would only cost time.
    serviceWorkers: 'block',
    launchOptions: {
      executablePath: findChromium(),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-dev-shm-usage',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: `node .tools/serve.mjs ${port}`,
    cwd: '../..',
    url: `${origin}/`,
    // A server left over from an older build would be tested by mistake.
    reuseExistingServer: false,
    stdout: 'ignore',
  },
});
