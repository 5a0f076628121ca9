/**
 * A pool of cost shared out by a driver [money]: each user's part = pool·(its driver/all drivers), the rate being pool
 * per unit of driver. Nothing is shared out where no one drives the pool: then every part is 0.
 * Source: cost-accounting-example.
 * Throws RangeError on a negative driver.
 * @param pool [money]
 * @param drivers use by each, any one unit
 */
export function allocate(pool: number, drivers: readonly number[]): number[] {
  const wrong = drivers.find((driver) => !(driver >= 0));
  if (wrong !== undefined) throw new RangeError(`cost driver ${wrong} must be 0 or more`);
  const all = drivers.reduce((sum, driver) => sum + driver, 0);
  return drivers.map((driver) => (all > 0 ? (pool * driver) / all : 0));
}
