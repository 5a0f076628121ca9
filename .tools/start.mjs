// `npm start`: installs and builds what is missing, then serves the app on this machine.
import { build } from './build.mjs';
import { installPackages } from './install.mjs';
import { serve } from './serve.mjs';
import { isBuilt } from './stamp.mjs';

const FIRST_PORT = 4173;
const TRIES = 50;

/** Reads the wished port from the environment; the default when none is set. */
function wishedPort(text) {
  if (!text) return FIRST_PORT;
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port;
  throw new RangeError(`PORT must be a whole number from 0 to 65535, got "${text}"`);
}

/** Serves on the wished port, or on the next free one above it. */
async function serveOnFreePort(first) {
  for (let port = first; port < first + TRIES && port <= 65535; port += 1) {
    try {
      return await serve(port);
    } catch (error) {
      if (error.code !== 'EADDRINUSE') throw error;
    }
  }
  throw new Error(`no free port from ${first} on; set PORT to another one`);
}

async function start() {
  const port = wishedPort(process.env.PORT);
  const installed = await installPackages();
  if (installed !== 0) return installed;
  const built = isBuilt() ? 0 : await build();
  if (built !== 0) return built;
  const server = await serveOnFreePort(port);
  console.log(
    `Rimeplan is ready. Open this address in a browser (Ctrl+C stops it):\nhttp://127.0.0.1:${server.address().port}/`,
  );
  return 0;
}

process.exitCode = await start().catch((error) => {
  console.error(`Rimeplan could not start: ${error.message}`);
  return 1;
});
