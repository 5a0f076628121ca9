import { exp, log } from '../../numeric/portable-math.ts';

/** The scale on which a parameter is fitted, where equal steps up and down are equally believable. */
export interface FitScale {
  readonly to: (value: number) => number;
  readonly from: (place: number) => number;
}

/** Factors: twice as much and half as much are equally far away. For values above 0. */
export const FACTOR_SCALE: FitScale = { to: log, from: exp };

/** The excess over 1 as a factor. An excess below this cannot be told from none. */
const LEAST_EXCESS = 0.01;

/** For values of 1 or more. */
export const EXCESS_SCALE: FitScale = {
  to: (value) => log(Math.max(LEAST_EXCESS, value - 1)),
  from: (place) => 1 + exp(place),
};

/** Odds as a factor, for shares between 0 and 1. */
export const ODDS_SCALE: FitScale = {
  to: (share) => log(share / (1 - share)),
  from: (place) => 1 / (1 + exp(-place)),
};
