import { type CellRange, type Expression, reference } from './expression.ts';
import type { DefinedName } from './workbook-types.ts';

/** A word that a spreadsheet takes as a name: letters, digits and underscores; never an address such as AB12. */
export function nameFor(...parts: readonly string[]): string {
  const words = parts.map((part) =>
    part
      .replace(/([a-z0-9])([A-Z])/g, '$1_$2')
      .replace(/[^A-Za-z0-9]+/g, '_')
      .toLowerCase(),
  );
  const name = words.join('_').replace(/^_+|_+$/g, '');
  // An underscore in the middle makes it unlike any address.
  return /^[a-z]+_/.test(name) ? name : `the_${name}`;
}

/** The names of a workbook, each given once. */
export class NameBook {
  readonly #names = new Map<string, string>();

  /** A reference by name to a cell. @param wished taken with a number behind it when it is taken already */
  give(wished: string, place: string, value: number): Expression {
    return reference(this.#take(wished, place), value);
  }

  giveRange(wished: string, place: string, values: readonly number[]): CellRange {
    return { text: this.#take(wished, place), values };
  }

  all(): readonly DefinedName[] {
    return [...this.#names].map(([name, range]) => ({ name, range }));
  }

  #take(wished: string, place: string): string {
    let name = wished;
    for (let k = 2; this.#names.has(name); k += 1) name = `${wished}_${k}`;
    this.#names.set(name, place);
    return name;
  }
}
