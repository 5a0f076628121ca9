import type { PlantRun } from '../risk/plant-memory.ts';

/** How an engine takes part in what the engines of its page tell each other. */
export interface SharedWeeks {
  /** It is the one that waits for the next edit, and keeps what the others have run. */
  readonly isWaiting: boolean;
  /** Tells the waiting engine of a week that was run. */
  readonly tell: (run: PlantRun) => void;
  readonly hear: (learn: (run: PlantRun) => void) => void;
}

const WAITING = 'waiting';

/** The name of an engine's thread, which says to which page it belongs and what its part is. */
export function engineName(page: string, isWaiting: boolean): string {
  return `engine ${page}${isWaiting ? ` ${WAITING}` : ''}`;
}

/**
 * The engine that waits for the next edit hears of every week the others run: an edit of a price or a loan then runs none. Browsers without
 * channels between threads share nothing, and run such weeks once more.
 * @param name of the engine's thread
 */
export function shareWeeks(name: string): SharedWeeks {
  const [, page = '', part] = name.split(' ');
  const isWaiting = part === WAITING;
  if (typeof BroadcastChannel === 'undefined') return { isWaiting, tell: () => {}, hear: () => {} };
  const channel = new BroadcastChannel(`rimeplan weeks ${page}`);
  return {
    isWaiting,
    tell: (run) => {
      if (!isWaiting) channel.postMessage(run);
    },
    hear: (learn) => {
      if (isWaiting) channel.addEventListener('message', ({ data }) => learn(data as PlantRun));
    },
  };
}
