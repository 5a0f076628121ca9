/** What is known under a key, or else worked out and kept. */
export function remembered<Value>(known: Map<string, Value>, key: string, work: () => Value): Value {
  if (!known.has(key)) known.set(key, work());
  return known.get(key) as Value;
}
