import type { ReactiveController } from 'lit';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { AfterRest } from '../../../src/components/load-table/after-rest.ts';

const host = {
  addController: (_: ReactiveController) => undefined,
  removeController: () => undefined,
  requestUpdate: () => undefined,
  updateComplete: Promise.resolve(true),
};

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

it('does the first work at once and the next when the hand rests', async () => {
  const done: string[] = [];
  const later = new AfterRest(host, 100);
  const work = (name: string) => async () => void done.push(name);
  later.start(work('first'));
  await vi.advanceTimersByTimeAsync(0);
  expect(done).toEqual(['first']);
  later.start(work('half typed'));
  await vi.advanceTimersByTimeAsync(60);
  later.start(work('typed'));
  await vi.advanceTimersByTimeAsync(60);
  expect(done).toEqual(['first']);
  await vi.advanceTimersByTimeAsync(60);
  expect(done).toEqual(['first', 'typed']);
});

it('gives up older work for newer', async () => {
  const kept: boolean[] = [];
  const later = new AfterRest(host, 0);
  later.start(async (goOn) => {
    await new Promise((resolve) => setTimeout(resolve, 50));
    kept.push(await goOn());
  });
  await vi.advanceTimersByTimeAsync(10);
  later.start(async (goOn) => void kept.push(await goOn()));
  await vi.advanceTimersByTimeAsync(100);
  expect(kept).toEqual([true, false]);
});

it('takes up unfinished work when the element is back in the page, and only that', async () => {
  let times = 0;
  const later = new AfterRest(host, 10);
  later.start(async () => void times++);
  later.hostDisconnected();
  await vi.advanceTimersByTimeAsync(50);
  expect(times).toBe(0);
  later.hostConnected();
  await vi.advanceTimersByTimeAsync(50);
  expect(times).toBe(1);
  later.hostDisconnected();
  later.hostConnected();
  await vi.advanceTimersByTimeAsync(50);
  expect(times).toBe(1);
});
