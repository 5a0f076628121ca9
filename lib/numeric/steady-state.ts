/**
 * Share of time that a Markov chain spends in each of its states in the long run [–], by elimination from the last
 * state down, which takes no differences, so that the smallest shares are as exact as the largest.
 * Source: grassmann-taksar-heyman-1985.
 * Throws RangeError when there is no state, or one that leads to none before it: every state but the first must.
 * @param rates `rates[i][j]`: how often the chain goes from state i to state j [1/any time]; `rates[i][i]` counts for nothing
 */
export function steadyState(rates: readonly (readonly number[])[]): number[] {
  if (rates.length === 0) throw new RangeError('a chain without states');
  const q = rates.map((row) => [...row]);
  for (let last = q.length - 1; last > 0; last -= 1) eliminate(q, last);
  const weights = [1];
  for (let state = 1; state < q.length; state += 1) {
    weights.push(weights.reduce((sum, weight, from) => sum + weight * (q[from]?.[state] ?? 0), 0));
  }
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / whole);
}

/** Takes the last state out: what led through it now leads straight to where it went on to. */
function eliminate(q: number[][], last: number): void {
  const leaving = q[last] ?? [];
  const out = leaving.slice(0, last).reduce((sum, rate) => sum + rate, 0);
  if (!(out > 0)) throw new RangeError(`state ${last} leads to no state before it`);
  for (const row of q.slice(0, last)) {
    const into = (row[last] ?? 0) / out;
    row[last] = into;
    if (into === 0) continue;
    for (let to = 0; to < last; to += 1) row[to] = (row[to] ?? 0) + into * (leaving[to] ?? 0);
  }
}
