/** The text of a file the user picked. */
export function readTextFile(file: File): Promise<string> {
  return file.text();
}

/** A name that every file system takes: letters, digits and hyphens. */
export function fileNameFor(planName: string): string {
  const plain = planName
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase();
  return `${plain === '' ? 'plan' : plain}.rimeplan.json`;
}

/** Hands the user a file to save. */
export function offerTextFile(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The download has begun once the click is handled; the address may go at the end of the turn.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}
