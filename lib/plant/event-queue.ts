/** An event: when, how urgent among those at the same instant, and what. */
export interface QueuedEvent<Payload> {
  readonly time: number;
  /** Lower goes first at equal times. */
  readonly priority: number;
  /** Order of arrival breaks the last tie, so that runs repeat exactly. */
  readonly sequence: number;
  readonly payload: Payload;
}

export interface EventQueue<Payload> {
  readonly heap: QueuedEvent<Payload>[];
  sequence: number;
}

export function eventQueue<Payload>(): EventQueue<Payload> {
  return { heap: [], sequence: 0 };
}

function before(a: QueuedEvent<unknown>, b: QueuedEvent<unknown>): boolean {
  if (a.time !== b.time) return a.time < b.time;
  if (a.priority !== b.priority) return a.priority < b.priority;
  return a.sequence < b.sequence;
}

function swap<Item>(heap: Item[], i: number, j: number): void {
  const held = heap[i] as Item;
  heap[i] = heap[j] as Item;
  heap[j] = held;
}

export function pushEvent<Payload>(queue: EventQueue<Payload>, time: number, priority: number, payload: Payload): void {
  const { heap } = queue;
  heap.push({ time, priority, sequence: queue.sequence, payload });
  queue.sequence += 1;
  let i = heap.length - 1;
  while (i > 0) {
    const parent = (i - 1) >> 1;
    if (!before(heap[i] as QueuedEvent<Payload>, heap[parent] as QueuedEvent<Payload>)) break;
    swap(heap, i, parent);
    i = parent;
  }
}

/** Time of the next event; infinity when the queue is empty. */
export function nextTime(queue: EventQueue<unknown>): number {
  return queue.heap[0]?.time ?? Number.POSITIVE_INFINITY;
}

function sink<Payload>(heap: QueuedEvent<Payload>[]): void {
  let i = 0;
  for (;;) {
    const left = 2 * i + 1;
    if (left >= heap.length) return;
    const right = left + 1;
    const rightFirst =
      right < heap.length && before(heap[right] as QueuedEvent<Payload>, heap[left] as QueuedEvent<Payload>);
    const child = rightFirst ? right : left;
    if (!before(heap[child] as QueuedEvent<Payload>, heap[i] as QueuedEvent<Payload>)) return;
    swap(heap, i, child);
    i = child;
  }
}

/** Removes and returns the next event; undefined when the queue is empty. */
export function popEvent<Payload>(queue: EventQueue<Payload>): QueuedEvent<Payload> | undefined {
  const { heap } = queue;
  const first = heap[0];
  const last = heap.pop();
  if (!first || !last || heap.length === 0) return first;
  heap[0] = last;
  sink(heap);
  return first;
}
