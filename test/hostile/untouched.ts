import { expect } from 'vitest';

const OWNERS = [Object.prototype, Array.prototype, String.prototype, Function.prototype, Number.prototype];

function names(): string {
  return OWNERS.map((owner) => Reflect.ownKeys(owner).map(String).join()).join('|');
}

const BEFORE = names();

/** Fails when anything that every object is made from has been added to, or when a planted script has run. */
export function expectUntouched(): void {
  expect(names()).toBe(BEFORE);
  expect('struck' in globalThis).toBe(false);
  expect('polluted' in {}).toBe(false);
}
