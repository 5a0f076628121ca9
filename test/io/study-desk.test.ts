import { describe, expect, it } from 'vitest';
import { JobBoard } from '../../lib/io/job-board.ts';
import { PartRuns } from '../../lib/io/part-runs.ts';
import type { Study, StudyEngine } from '../../lib/io/studies.ts';
import { StudyDesk } from '../../lib/io/study-desk.ts';

/** A desk on one engine, whose parts end when the test says so. */
function deskOnOne() {
  const ends: { resolve: (value: unknown) => void; reject: (reason: unknown) => void }[] = [];
  const spawn = () => ({ engine: {} as StudyEngine, stop: () => {} });
  const desk = new StudyDesk(new PartRuns<StudyEngine>((report) => new JobBoard(1, spawn, report)));
  const part = { size: 1, start: () => new Promise((resolve, reject) => ends.push({ resolve, reject })) };
  const study = (kind: Study['kind'], key: string, parts = 1): Study => ({
    kind,
    key,
    parts: Array.from({ length: parts }, () => part),
    gather: (answers) => answers as never,
  });
  const end = async (value: unknown) => {
    ends.shift()?.resolve(value);
    for (let tick = 0; tick < 6; tick += 1) await Promise.resolve();
  };
  const fail = async () => {
    ends.shift()?.reject(new Error('broken'));
    for (let tick = 0; tick < 6; tick += 1) await Promise.resolve();
  };
  return { desk, study, end, fail, open: () => ends.length };
}

describe('StudyDesk', () => {
  it('does one study after the other, tells how far it is, and keeps the answers', async () => {
    const { desk, study, end } = deskOnOne();
    desk.start(study('spread', 'a', 2));
    desk.start(study('tornado', 'b'));
    expect(desk.states().spread).toMatchObject({ status: 'running', progress: 0, wantedKey: 'a' });
    expect(desk.states().tornado.status).toBe('waiting');
    await end(1);
    expect(desk.states().spread.progress).toBe(0.5);
    await end(2);
    expect(desk.states().spread).toMatchObject({ status: 'idle', answer: { key: 'a', value: [1, 2] } });
    expect(desk.states().tornado.status).toBe('running');
    await end(3);
    expect(desk.states().tornado.answer).toEqual({ key: 'b', value: [3] });
  });

  it('lets the next one begin when one is stopped, and keeps the answer before', async () => {
    const { desk, study, end, open } = deskOnOne();
    desk.start(study('spread', 'a'));
    await end('old');
    desk.start(study('spread', 'b'));
    desk.start(study('kneeMap', 'c'));
    desk.cancel('spread');
    expect(desk.states().spread).toMatchObject({ status: 'idle', answer: { key: 'a' } });
    expect(desk.states().kneeMap.status).toBe('running');
    expect(open()).toBe(2);
  });

  it('answers a study that was begun twice in one breath', async () => {
    const { desk, study, end } = deskOnOne();
    const same = study('stress', 'a');
    desk.start(same);
    desk.start(same);
    // The first run was stopped; what it is told goes nowhere.
    await end('first');
    expect(desk.states().stress.status).toBe('running');
    await end('second');
    expect(desk.states().stress).toMatchObject({ status: 'idle', answer: { key: 'a', value: ['second'] } });
  });

  it('puts a later study of a kind in the place of an earlier one', async () => {
    const { desk, study, end } = deskOnOne();
    desk.start(study('pumpSides', 'a'));
    desk.start(study('pumpSides', 'b'));
    await end('of the stopped one');
    expect(desk.states().pumpSides.answer).toBeNull();
    await end('of b');
    expect(desk.states().pumpSides.answer).toEqual({ key: 'b', value: ['of b'] });
  });

  it('says when one has failed, and goes on', async () => {
    const { desk, study, fail } = deskOnOne();
    desk.start(study('spread', 'a'));
    desk.start(study('tornado', 'b'));
    await fail();
    expect(desk.states().spread.status).toBe('failed');
    expect(desk.states().tornado.status).toBe('running');
  });

  it('tells its listeners of every change, until they stop listening', () => {
    const { desk, study } = deskOnOne();
    let heard = 0;
    const stop = desk.subscribe(() => {
      heard += 1;
    });
    desk.start(study('spread', 'a'));
    expect(heard).toBeGreaterThan(0);
    stop();
    const before = heard;
    desk.cancel('spread');
    expect(heard).toBe(before);
  });
});
