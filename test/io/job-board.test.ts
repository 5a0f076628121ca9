import { describe, expect, it, vi } from 'vitest';
import { type BoardManners, type Job, JobBoard, UNFINISHED } from '../../lib/io/job-board.ts';

interface Started {
  readonly key: string;
  readonly finish: (value: unknown) => void;
  readonly fail: (reason: unknown) => void;
}

/** A board with engines that do nothing until the test says so. */
function boardOf(engines: number, manners?: BoardManners) {
  const started: Started[] = [];
  const done: [string, unknown][] = [];
  const failed: string[] = [];
  let stopped = 0;
  const spawn = () => ({
    engine: null,
    stop: () => {
      stopped += 1;
    },
  });
  const board = new JobBoard<null>(
    engines,
    spawn,
    {
      onDone: (key, value) => done.push([key, value]),
      onFailed: (key) => failed.push(key),
    },
    manners,
  );
  const job = (key: string, slow = false): Job<null> => ({
    key,
    slow,
    start: () => new Promise((finish, fail) => started.push({ key, finish, fail })),
  });
  const running = () => started.map((entry) => entry.key);
  const end = async (key: string, value: unknown) => {
    started.findLast((entry) => entry.key === key)?.finish(value);
    await Promise.resolve();
    await Promise.resolve();
  };
  const finish = (key: string) => end(key, `${key}!`);
  const finishPiece = (key: string) => end(key, UNFINISHED);
  return { board, job, running, finish, finishPiece, started, done, failed, stops: () => stopped };
}

describe('job board', () => {
  it('starts the most urgent jobs first and the next one when an engine is free', async () => {
    const { board, job, running, finish, done } = boardOf(2);
    board.want([job('a'), job('b'), job('c')]);
    expect(running()).toEqual(['a', 'b']);
    await finish('b');
    expect(running()).toEqual(['a', 'b', 'c']);
    expect(done).toEqual([['b', 'b!']]);
  });

  it('drops waiting jobs that are no longer wanted', async () => {
    const { board, job, running, finish } = boardOf(1);
    board.want([job('a'), job('old')]);
    board.want([job('a'), job('new')]);
    await finish('a');
    expect(running()).toEqual(['a', 'new']);
  });

  it('stops a running job that is no longer wanted and never reports it', async () => {
    const { board, job, running, finish, done, stops } = boardOf(1);
    board.want([job('old')]);
    board.want([job('new')]);
    expect(stops()).toBe(1);
    expect(running()).toEqual(['old', 'new']);
    await finish('old');
    await finish('new');
    expect(done).toEqual([['new', 'new!']]);
  });

  it('does not start again a job that is running and still wanted', () => {
    const { board, job, running } = boardOf(2);
    board.want([job('a')]);
    board.want([job('a'), job('b')]);
    expect(running()).toEqual(['a', 'b']);
  });

  it('lets a quick job in between two pieces of a slow one, which is then gone on with', async () => {
    const { board, job, running, finish, finishPiece, done, stops } = boardOf(1);
    board.want([job('slow', true)]);
    board.want([job('slow', true), job('quick')]);
    expect(running()).toEqual(['slow']);
    await finishPiece('slow');
    expect(running()).toEqual(['slow', 'quick']);
    await finish('quick');
    expect(running()).toEqual(['slow', 'quick', 'slow']);
    await finish('slow');
    expect(done).toEqual([
      ['quick', 'quick!'],
      ['slow', 'slow!'],
    ]);
    expect(stops()).toBe(0);
  });

  it('does not go on with a slow job that nobody wants any more', async () => {
    const { board, job, running, finishPiece, done, stops } = boardOf(1, { quickOnly: 0, grace: 10_000 });
    board.want([job('slow', true)]);
    board.want([]);
    await finishPiece('slow');
    expect(running()).toEqual(['slow']);
    expect(done).toEqual([]);
    expect(stops()).toBe(0);
  });

  it('never stops a quick job for another', () => {
    const { board, job, running, stops } = boardOf(1);
    board.want([job('a')]);
    board.want([job('b'), job('a')]);
    expect(running()).toEqual(['a']);
    expect(stops()).toBe(0);
  });

  it('reports a failure and goes on', async () => {
    const { board, job, started, running, failed } = boardOf(1);
    board.want([job('a'), job('b')]);
    started[0]?.fail(new Error('broken'));
    await new Promise((resume) => setTimeout(resume, 0));
    expect(failed).toEqual(['a']);
    expect(running()).toEqual(['a', 'b']);
  });

  it('keeps a seat free for quick jobs, which then stop no slow one', () => {
    const { board, job, running, stops } = boardOf(2, { quickOnly: 1, grace: 0 });
    board.want([job('slow 1', true), job('slow 2', true)]);
    expect(running()).toEqual(['slow 1']);
    board.want([job('slow 1', true), job('slow 2', true), job('quick'), job('next')]);
    expect(running()).toEqual(['slow 1', 'quick']);
    expect(stops()).toBe(0);
  });

  it('lets a quick job that is no longer wanted end within its grace, and then begins the next with the same engine', async () => {
    const { board, job, running, finish, done, stops } = boardOf(1, { quickOnly: 1, grace: 10_000 });
    board.want([job('old')]);
    board.want([job('new')]);
    expect(running()).toEqual(['old']);
    await finish('old');
    expect(running()).toEqual(['old', 'new']);
    expect(done).toEqual([['old', 'old!']]);
    expect(stops()).toBe(0);
  });

  it('stops it when its grace is over', () => {
    vi.useFakeTimers();
    const { board, job, running, stops } = boardOf(1, { quickOnly: 1, grace: 250 });
    board.want([job('old')]);
    vi.advanceTimersByTime(200);
    board.want([job('new')]);
    vi.advanceTimersByTime(40);
    expect(running()).toEqual(['old']);
    vi.advanceTimersByTime(20);
    expect(running()).toEqual(['old', 'new']);
    expect(stops()).toBe(1);
    vi.useRealTimers();
  });

  it('leaves a job alone that is wanted again within its grace', () => {
    vi.useFakeTimers();
    const { board, job, running, stops } = boardOf(1, { quickOnly: 1, grace: 250 });
    board.want([job('a')]);
    board.want([]);
    board.want([job('a')]);
    vi.advanceTimersByTime(1000);
    expect(running()).toEqual(['a']);
    expect(stops()).toBe(0);
    vi.useRealTimers();
  });

  it('says nothing more once closed', async () => {
    const { board, job, finish, done, stops } = boardOf(1);
    board.want([job('a'), job('b')]);
    board.close();
    await finish('a');
    expect(done).toEqual([]);
    expect(stops()).toBe(1);
  });
});
