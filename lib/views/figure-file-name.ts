/** Longest name of a saved figure, ending left out. */
const LONGEST = 60;

/** A name for a saved figure that every file system takes, such as `payback-four-on-one-pump`. */
export function figureFileName(figure: string, scenario: string): string {
  const plain = `${figure} ${scenario}`
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .toLowerCase()
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, '');
  return plain === '' ? 'figure' : plain;
}
