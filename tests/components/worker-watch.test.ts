import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { pieces } from '../../src/components/load-table/pieces.ts';
import { SILENCE, watchWorker } from '../../src/components/worker-watch.ts';

/** A worker as a browser shows it to a page: it says something, fails, or is never heard of again. */
class Stand extends EventTarget {
  ended = false;
  asked: unknown;
  postMessage(asked: unknown): void {
    this.asked = asked;
  }
  terminate(): void {
    this.ended = true;
  }
  says(data: unknown): void {
    this.dispatchEvent(Object.assign(new Event('message'), { data }));
  }
}

const asWorker = (stand: Stand) => stand as unknown as Worker;

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('watchWorker', () => {
  it.each(['error', 'messageerror'])('gives a worker up at once at an event "%s", and tells it once', (type) => {
    const stand = new Stand();
    const lost = vi.fn();
    watchWorker(asWorker(stand), lost);
    stand.dispatchEvent(new Event(type));
    stand.dispatchEvent(new Event(type));
    vi.advanceTimersByTime(10 * SILENCE);
    expect(lost).toHaveBeenCalledOnce();
  });

  it('gives up a worker that is silent for long, not one that is slow but goes on', () => {
    const stand = new Stand();
    const lost = vi.fn();
    watchWorker(asWorker(stand), lost);
    for (let i = 0; i < 5; i++) {
      vi.advanceTimersByTime(SILENCE - 1);
      expect(lost).not.toHaveBeenCalled();
      stand.says('still at it');
    }
    vi.advanceTimersByTime(SILENCE);
    expect(lost).toHaveBeenCalledOnce();
  });

  it('says nothing after its end', () => {
    const stand = new Stand();
    const lost = vi.fn();
    watchWorker(asWorker(stand), lost)();
    stand.dispatchEvent(new Event('error'));
    vi.advanceTimersByTime(10 * SILENCE);
    expect(lost).not.toHaveBeenCalled();
  });
});

describe('pieces of work', () => {
  const work = (stand: Stand) => ({
    worker: () => asWorker(stand),
    asked: 3,
    onPage: (count: number) => Array.from({ length: count }, (_, i) => i),
    goOn: async () => true,
  });

  it('are made on the page, whole, when the worker that had begun them is never heard of again', async () => {
    const stand = new Stand();
    const all = pieces<number, number>(work(stand));
    await vi.advanceTimersByTimeAsync(1);
    stand.says({ piece: 0 });
    await vi.advanceTimersByTimeAsync(SILENCE);
    expect(await all).toEqual([0, 1, 2]);
    expect(stand.ended).toBe(true);
  });

  it('come from the worker while it works', async () => {
    const stand = new Stand();
    const all = pieces<number, number>(work(stand));
    await vi.advanceTimersByTimeAsync(1);
    for (const said of [{ piece: 7 }, { piece: 8 }, { done: true }]) stand.says(said);
    await vi.advanceTimersByTimeAsync(1);
    expect(await all).toEqual([7, 8]);
    expect(stand.ended).toBe(true);
  });
});
