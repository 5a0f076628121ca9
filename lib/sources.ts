/** One published source. `memory` says that the figure was recalled and not read in the source itself. */
export interface Source {
  readonly author: string;
  readonly title: string;
  readonly year: number;
  readonly note?: string;
}

/** The one bibliography: code, inputs and tests cite these keys. A test fails on an unknown or unused key. */
export const SOURCES = {
  // Physics
  'iapws-r14-08': {
    author: 'International Association for the Properties of Water and Steam',
    title: 'Revised Release on the Pressure along the Melting and Sublimation Curves of Ordinary Water Substance, R14-08(2011)',
    year: 2011,
  },
  // Money
  // Shop inputs
  'common-practice': {
    author: 'The trade',
    title: 'Common practice, no source',
    year: 2026,
    note: 'What practitioners hold to be usual; no publication stands behind it.',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
