import { spawn } from 'node:child_process';
import { ROOT } from './paths.mjs';

const ENV = { NEXT_TELEMETRY_DISABLED: '1' };

/**
 * Runs a command in the project's folder with its output shown, and resolves to its exit code.
 * Nothing is read from standard input, so a command that asks a question fails instead of waiting for ever.
 * A command that cannot be started counts as code 127.
 */
export function run(command, args, env = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: ROOT,
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, ...ENV, ...env },
    });
    child.on('error', (error) => {
      console.error(`${command}: ${error.message}`);
      resolve(127);
    });
    child.on('close', (code) => resolve(code ?? 1));
  });
}

/** Runs the command-line program of an installed package. */
export function runTool(name, args, env) {
  return run(`${ROOT}node_modules/.bin/${name}`, args, env);
}
