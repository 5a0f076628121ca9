/** Gives long texts short names, equal for equal texts; the oldest are forgotten, and their texts get new names when they come again. */
export class ShortNames {
  readonly #names = new Map<string, string>();
  readonly #most: number;
  #made = 0;

  /** @param most texts told apart at a time, 1 or more */
  constructor(most: number) {
    this.#most = most;
  }

  of(text: string): string {
    const known = this.#names.get(text);
    if (known !== undefined) return known;
    const oldest = this.#names.keys().next().value;
    if (this.#names.size >= this.#most && oldest !== undefined) this.#names.delete(oldest);
    this.#made += 1;
    const name = `#${this.#made}`;
    this.#names.set(text, name);
    return name;
  }
}
