/** Where a value says it came from when it was fitted to the batch log. */
export const FITTED_SOURCE = 'fitted to the batch log';
