// A file server for out/: `node .tools/serve.mjs [port]`. It listens on this machine only.
import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, relative, resolve, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { contentPolicy, FILE_POLICY } from './content-policy.mjs';
import { OUT } from './paths.mjs';

const HOST = '127.0.0.1';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
};

const FIXED_HEADERS = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'X-Frame-Options': 'DENY',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), geolocation=(), microphone=(), payment=(), usb=()',
};

/** The path inside the folder that a request names, or undefined when it lies outside the folder or is hidden. */
export function pathFor(url, folder = OUT) {
  let path;
  try {
    path = decodeURIComponent(url.split(/[?#]/)[0]);
  } catch {
    return undefined;
  }
  if (path.includes('\0') || /(^|[/\\])\./.test(path)) return undefined;
  const file = resolve(join(folder, path.endsWith('/') ? `${path}index.html` : path));
  return file.startsWith(folder + sep) ? file : undefined;
}

/** Files under _next/static carry a hash of their content in their name, so they never change. */
function cacheRule(file, folder) {
  const hashed = file.startsWith(join(folder, '_next', 'static') + sep);
  return hashed ? 'public, max-age=31536000, immutable' : 'no-cache';
}

function send(response, status, headers, body) {
  response.writeHead(status, { ...FIXED_HEADERS, ...headers });
  response.end(response.req.method === 'HEAD' ? undefined : body);
}

function sendFile(response, status, file, body, cache) {
  const ending = extname(file);
  send(
    response,
    status,
    {
      'Content-Type': TYPES[ending] ?? 'application/octet-stream',
      'Cache-Control': cache,
      'Content-Security-Policy': ending === '.html' ? contentPolicy(String(body)) : FILE_POLICY,
    },
    body,
  );
}

async function sendNotFound(response, folder) {
  const file = join(folder, '404.html');
  const body = await readFile(file).catch(() => '<!doctype html><title>Not found</title><p>Not found</p>');
  sendFile(response, 404, file, body, 'no-cache');
}

async function answer(request, response, folder) {
  if (!['GET', 'HEAD'].includes(request.method)) return send(response, 405, { Allow: 'GET, HEAD' });
  const file = pathFor(request.url, folder);
  const found = file && (await stat(file).catch(() => undefined));
  // Pages are folders; their links inside the page are relative to a path that ends with a slash.
  if (found?.isDirectory())
    return send(response, 308, { Location: `/${relative(folder, file).replaceAll(sep, '/')}/` });
  if (!found) return sendNotFound(response, folder);
  return sendFile(response, 200, file, await readFile(file), cacheRule(file, folder));
}

/** Serves a folder; resolves to the server once it listens, rejects when the port is taken. Port 0 means any free one. */
export function serve(port, folder = OUT) {
  const server = createServer((request, response) => {
    answer(request, response, folder).catch(() => send(response, 500, {}));
  });
  return new Promise((done, refuse) => {
    server.once('error', refuse);
    server.listen(port, HOST, () => done(server));
  });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const server = await serve(Number(process.argv[2] ?? 4173));
  console.log(`http://${HOST}:${server.address().port}/`);
}
