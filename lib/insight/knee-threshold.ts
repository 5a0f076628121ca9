/** One chamber more must add at least this share of what it would add with a pump of its own. */
export const KNEE_THRESHOLD = 0.8;
