import { freePool, taskTime } from './crew.ts';
import { pushEvent } from './event-queue.ts';
import { type ChamberRun, type CrewRequest, PRIORITY, type Shop } from './shop-state.ts';
import type { TaskName } from './types.ts';

/** What a free person does first: empty a finished chamber, then clean, then load. */
const URGENCY: Readonly<Record<TaskName, number>> = { unload: 0, clean: 1, load: 2 };

/** Asks for a person; whoever asked earlier is served earlier among tasks of the same kind. */
export function requestCrew(shop: Shop, chamber: ChamberRun, task: TaskName): void {
  const wet = (chamber.current ?? chamber.next)?.load.wet ?? 0;
  const duration = taskTime(shop.spec.crew, task, wet);
  shop.requests.push({ chamber: chamber.index, task, duration, since: shop.now });
  shop.requests.sort((a, b) => URGENCY[a.task] - URGENCY[b.task] || a.since - b.since || a.chamber - b.chamber);
}

/** Gives tasks to whoever is free now; returns the tasks begun, in order. */
export function assignCrew(shop: Shop): CrewRequest[] {
  const begun: CrewRequest[] = [];
  for (let i = 0; i < shop.requests.length; ) {
    const request = shop.requests[i] as CrewRequest;
    const pool = freePool(shop.pools, shop.now, request.duration);
    if (!pool) {
      i += 1;
      continue;
    }
    shop.requests.splice(i, 1);
    pool.busy += 1;
    const end = shop.now + request.duration;
    const { chamber, task } = request;
    pushEvent(shop.queue, end, PRIORITY.taskDone, { kind: 'taskDone', chamber, task, pool });
    shop.crewSpans.push({ task, start: shop.now, end });
    begun.push(request);
  }
  return begun;
}
