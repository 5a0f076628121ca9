import { fileURLToPath } from 'node:url';

/** Folder of the project, with a trailing slash. */
export const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** Folder that a build fills and the server reads. */
export const OUT = fileURLToPath(new URL('../out', import.meta.url));
