/**
 * Published yearly shares of the basis, in percent. Source: irs-pub-946.
 * The half-year tables (`recovery3` … `recovery20`) are Table A-1, the two last-quarter ones Table A-5.
 * They are kept as printed: computing them gives 44.44 for the printed 44.45 and a flat 5.90 in the 15-year column.
 * Tables and the choice between them are law, and change: the plan's owner chooses one with a tax adviser.
 * A test adds up every column to 100.
 */
export const DEPRECIATION_TABLES = {
  recovery3: [33.33, 44.45, 14.81, 7.41],
  recovery5: [20, 32, 19.2, 11.52, 11.52, 5.76],
  recovery7: [14.29, 24.49, 17.49, 12.49, 8.93, 8.92, 8.93, 4.46],
  recovery10: [10, 18, 14.4, 11.52, 9.22, 7.37, 6.55, 6.55, 6.56, 6.55, 3.28],
  recovery15: [5, 9.5, 8.55, 7.7, 6.93, 6.23, 5.9, 5.9, 5.91, 5.9, 5.91, 5.9, 5.91, 5.9, 5.91, 2.95],
  recovery20: [
    3.75, 7.219, 6.677, 6.177, 5.713, 5.285, 4.888, 4.522, 4.462, 4.461, 4.462, 4.461, 4.462, 4.461, 4.462, 4.461,
    4.462, 4.461, 4.462, 4.461, 2.231,
  ],
  recovery5LastQuarter: [5, 38, 22.8, 13.68, 10.94, 9.58],
  recovery7LastQuarter: [3.57, 27.55, 19.68, 14.06, 10.04, 8.73, 8.73, 7.64],
} as const satisfies Record<string, readonly number[]>;

export type DepreciationTable = keyof typeof DEPRECIATION_TABLES;
