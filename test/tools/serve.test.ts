import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type IncomingMessage, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pathFor, serve } from '../../.tools/serve.mjs';

interface Answer {
  readonly status: number | undefined;
  readonly headers: IncomingMessage['headers'];
  readonly body: string;
}

const parent = mkdtempSync(join(tmpdir(), 'rimeplan-serve-'));
const folder = join(parent, 'out');
let server: Awaited<ReturnType<typeof serve>>;

/** Asks the server for a path exactly as it is written; fetch would tidy it up first. */
function ask(path: string, method = 'GET'): Promise<Answer> {
  const { port } = server.address() as AddressInfo;
  return new Promise((resolve, reject) => {
    const call = request({ host: '127.0.0.1', port, path, method }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () => {
        resolve({ status: response.statusCode, headers: response.headers, body: Buffer.concat(chunks).toString() });
      });
    });
    call.on('error', reject).end();
  });
}

beforeAll(async () => {
  mkdirSync(join(folder, 'lender'), { recursive: true });
  mkdirSync(join(folder, '_next', 'static'), { recursive: true });
  writeFileSync(join(parent, 'secret.txt'), 'secret');
  mkdirSync(join(parent, 'out-other'));
  writeFileSync(join(parent, 'out-other', 'secret.txt'), 'secret');
  writeFileSync(join(folder, '.stamp'), 'secret');
  writeFileSync(join(folder, 'index.html'), '<script>hello()</script>');
  writeFileSync(join(folder, 'lender', 'index.html'), 'papers');
  writeFileSync(join(folder, '404.html'), 'nothing here');
  writeFileSync(join(folder, '_next', 'static', 'a.js'), 'a');
  server = await serve(0, folder);
});

afterAll(() => {
  server.close();
  rmSync(parent, { recursive: true });
});

describe('the server', () => {
  it('sends a page with its policy and guards', async () => {
    const { status, headers, body } = await ask('/');
    expect({ status, body }).toEqual({ status: 200, body: '<script>hello()</script>' });
    expect(headers['content-type']).toBe('text/html; charset=utf-8');
    expect(headers['content-security-policy']).toContain("script-src 'self' 'sha256-");
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['x-frame-options']).toBe('DENY');
    expect(headers['referrer-policy']).toBe('no-referrer');
    expect(headers['cross-origin-opener-policy']).toBe('same-origin');
    expect(headers['cross-origin-resource-policy']).toBe('same-origin');
    expect(headers['permissions-policy']).toContain('camera=()');
    expect(headers['cache-control']).toBe('no-cache');
  });

  it('lets files with a hash in their name be kept for ever', async () => {
    expect((await ask('/_next/static/a.js')).headers['cache-control']).toContain('immutable');
  });

  it('lets no worker and no picture ask anything of another place', async () => {
    const policy = String((await ask('/_next/static/a.js')).headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'; script-src 'self';");
    expect(policy).not.toMatch(/script-src[^;]*unsafe|https?:|\*/);
  });

  it('does not let a missing file be kept', async () => {
    const { status, headers } = await ask('/_next/static/gone.js');
    expect(status).toBe(404);
    expect(headers['cache-control']).toBe('no-cache');
  });

  it('leads a page without its slash to the page', async () => {
    expect(await ask('/lender?a=1')).toMatchObject({ status: 308, headers: { location: '/lender/' } });
    expect((await ask('/lender/')).body).toBe('papers');
    // Two slashes at the front of the new address would lead to another host.
    expect((await ask('//lender')).headers.location).toBe('/lender/');
  });

  it.each(['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/..%5csecret.txt', '/lender/../../secret.txt'])(
    'does not leave its folder for %s',
    async (path) => {
      expect(await ask(path)).toMatchObject({ status: 404, body: 'nothing here' });
    },
  );

  it.each(['/../out-other/secret.txt', '/.stamp', '/%00', '/%', '/gone', '/_next/static/'])(
    'finds nothing at %s',
    async (path) => {
      expect(await ask(path)).toMatchObject({ status: 404, body: 'nothing here' });
    },
  );

  it('answers HEAD without a body and refuses to be written to', async () => {
    expect(await ask('/', 'HEAD')).toMatchObject({ status: 200, body: '' });
    expect(await ask('/', 'POST')).toMatchObject({ status: 405, headers: { allow: 'GET, HEAD' } });
  });

  it('refuses a port that is taken', async () => {
    const { port } = server.address() as AddressInfo;
    await expect(serve(port, folder)).rejects.toThrow('EADDRINUSE');
  });
});

it('never names a file outside the folder', () => {
  for (const url of ['/..', '/a/../../b', '/%2e%2e/%2e%2e/b', '/a/%2e%2e/%2e%2e/b', '/..\\b']) {
    expect(pathFor(url, folder), url).toBeUndefined();
  }
});
