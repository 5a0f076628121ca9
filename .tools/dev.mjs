// `npm run dev`: the app with changes shown as they are made.
import { runTool } from './run.mjs';

process.exitCode = await runTool('next', ['dev', ...process.argv.slice(2)]);
