import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { OUT } from '../../.tools/paths.mjs';
import { serve } from '../../.tools/serve.mjs';
import { test as strictTest } from './strict-page.ts';

/** A copy of the built site with a server of its own, which a test may change and switch off. */
export class OwnSite {
  readonly folder = join(mkdtempSync(join(tmpdir(), 'rimeplan-site-')), 'out');
  #server: Server | undefined;
  #port = 0;

  constructor() {
    cpSync(OUT, this.folder, { recursive: true });
  }

  async switchOn(): Promise<void> {
    const server: Server = await serve(this.#port, this.folder);
    this.#server = server;
    this.#port = (server.address() as AddressInfo).port;
  }

  /** Nothing answers any more, as without a network. */
  switchOff(): Promise<void> {
    return new Promise((done) => {
      this.#server?.close(() => done());
      this.#server?.closeAllConnections();
    });
  }

  origin(): string {
    return `http://127.0.0.1:${this.#port}`;
  }

  remove(): void {
    rmSync(join(this.folder, '..'), { recursive: true });
  }
}

/** The strict test function on a site of the test's own. */
export const test = strictTest.extend<{ readonly site: OwnSite }>({
  // biome-ignore lint/correctness/noEmptyPattern: the runner reads what a fixture needs from this pattern
  site: async ({}, use) => {
    const site = new OwnSite();
    await site.switchOn();
    await use(site);
    await site.switchOff();
    site.remove();
  },
  baseURL: async ({ site }, use) => use(`${site.origin()}/`),
});
