import type { Finding } from '../result.ts';
import { commandFinding } from './command-finding.ts';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EACCES: 'it is not allowed',
  EPERM: 'it is not allowed',
  EISDIR: 'that is a folder',
  ENOTDIR: 'part of its path is not a folder',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk can only be read',
  ENAMETOOLONG: 'its name is too long',
};

function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return REASONS[code] ?? (code || 'the system refused');
}

/** Why a file could not be read or written, in plain words. */
export function fileFault(deed: 'read' | 'written', path: string, error: unknown): Finding {
  const problem = `The file could not be ${deed}: ${reasonOf(error)}.`;
  return commandFinding(path, '', problem, 'Check the path and who may use it.');
}

/** The results would take the place of the plan they are of. */
export function overwritesPlan(path: string): Finding {
  return commandFinding(
    '--out',
    path,
    'That is the plan itself; the results would overwrite it.',
    'Name another file.',
  );
}
