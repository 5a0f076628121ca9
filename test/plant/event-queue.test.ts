import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EventQueue, eventQueue, nextTime, popEvent, pushEvent } from '../../lib/plant/event-queue.ts';

function drain<Payload>(queue: EventQueue<Payload>): Payload[] {
  const payloads: Payload[] = [];
  for (let event = popEvent(queue); event; event = popEvent(queue)) payloads.push(event.payload);
  return payloads;
}

describe('eventQueue', () => {
  it('gives events in order of time', () => {
    const queue = eventQueue<string>();
    pushEvent(queue, 30, 0, 'last');
    pushEvent(queue, 10, 0, 'first');
    pushEvent(queue, 20, 0, 'middle');
    expect(nextTime(queue)).toBe(10);
    expect(drain(queue)).toEqual(['first', 'middle', 'last']);
  });

  it('settles ties by priority, then by order of arrival', () => {
    const queue = eventQueue<string>();
    pushEvent(queue, 5, 1, 'later b');
    pushEvent(queue, 5, 0, 'urgent a');
    pushEvent(queue, 5, 1, 'later c');
    pushEvent(queue, 5, 0, 'urgent d');
    expect(drain(queue)).toEqual(['urgent a', 'urgent d', 'later b', 'later c']);
  });

  it('is empty in good order', () => {
    const queue = eventQueue<number>();
    expect(popEvent(queue)).toBeUndefined();
    expect(nextTime(queue)).toBe(Number.POSITIVE_INFINITY);
    pushEvent(queue, 1, 0, 7);
    expect(drain(queue)).toEqual([7]);
    expect(nextTime(queue)).toBe(Number.POSITIVE_INFINITY);
  });

  it('sorts like a stable sort by time and priority', () => {
    const event = fc.record({ time: fc.integer({ min: 0, max: 6 }), priority: fc.integer({ min: 0, max: 2 }) });
    fc.assert(
      fc.property(fc.array(event, { maxLength: 60 }), (events) => {
        const queue = eventQueue<number>();
        events.forEach(({ time, priority }, index) => {
          pushEvent(queue, time, priority, index);
        });
        const sorted = events
          .map((item, index) => ({ ...item, index }))
          .sort((a, b) => a.time - b.time || a.priority - b.priority);
        expect(drain(queue)).toEqual(sorted.map((item) => item.index));
      }),
    );
  });

  it('keeps its order when pushing and popping alternate', () => {
    const action = fc.oneof(fc.record({ push: fc.integer({ min: 0, max: 50 }) }), fc.constant('pop' as const));
    fc.assert(
      fc.property(fc.array(action, { maxLength: 80 }), (actions) => {
        const queue = eventQueue<number>();
        const model: number[] = [];
        for (const step of actions) {
          if (step === 'pop') {
            model.sort((a, b) => a - b);
            expect(popEvent(queue)?.payload).toBe(model.shift());
          } else {
            pushEvent(queue, step.push, 0, step.push);
            model.push(step.push);
          }
        }
      }),
    );
  });
});
