import { stat } from 'node:fs/promises';

/** Whether two paths, links followed, lead to one and the same file; false when either leads nowhere. */
export async function isSameFile(first: string, second: string): Promise<boolean> {
  try {
    const [a, b] = await Promise.all([stat(first), stat(second)]);
    return a.dev === b.dev && a.ino === b.ino;
  } catch {
    return false;
  }
}
