/** What tabs of one browser tell each other: a plan was written, or the list of plans is another. */
export interface TabNews {
  readonly planId: string;
}

/** How a tab speaks to the others. */
export interface TabChannel {
  readonly tell: (news: TabNews) => void;
  readonly listen: (hear: (news: TabNews) => void) => void;
}

const NAME = 'rimeplan';

function isNews(data: unknown): data is TabNews {
  return typeof data === 'object' && data !== null && 'planId' in data && typeof data.planId === 'string';
}

/** The channel between the tabs of this browser. Without one a tab hears nothing, and the store alone keeps them apart. */
export function openTabChannel(): TabChannel {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => {}, listen: () => {} };
  const channel = new BroadcastChannel(NAME);
  return {
    tell: (news) => channel.postMessage(news),
    listen: (hear) =>
      channel.addEventListener('message', ({ data }) => {
        if (isNews(data)) hear(data);
      }),
  };
}
