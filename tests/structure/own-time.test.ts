import { describe, expect, it } from 'vitest';
import { inOwnTime, type TraceEvent } from '../../scripts/lighthouse/own-time.ts';

const thread = (tid: number, name: string): TraceEvent => ({
  name: 'thread_name',
  ph: 'M',
  pid: 1,
  tid,
  ts: 0,
  args: { name },
});
const event = (name: string, tid: number, ts: number, dur?: number, tdur?: number): TraceEvent => ({
  name,
  ph: dur === undefined ? 'I' : 'X',
  pid: 1,
  tid,
  ts,
  ...(dur !== undefined && { dur }),
  ...(tdur !== undefined && { tdur }),
});

/** A page's thread is 1, another's 2. */
const seen = (...events: TraceEvent[]) =>
  inOwnTime([thread(1, 'CrRendererMain'), thread(2, 'Compositor'), ...events]).slice(2);

describe('a trace in the own time of a page', () => {
  it('has tasks as long as the processor worked on them', () => {
    expect(seen(event('RunTask', 1, 100, 90, 30))).toMatchObject([{ ts: 100, dur: 30 }]);
  });

  it('draws together what happened inside, so that it stays inside', () => {
    const [, inner, mark] = seen(
      event('RunTask', 1, 100, 90, 30),
      event('Layout', 1, 130, 60, 9),
      event('mark', 1, 160),
    );
    expect(inner).toMatchObject({ ts: 110, dur: 20 });
    expect(mark!.ts).toBe(120);
  });

  it('leaves what happened between tasks, and other threads, as they were', () => {
    const [, , between, other] = seen(
      event('RunTask', 1, 100, 90, 30),
      event('RunTask', 1, 300, 10, 10),
      event('mark', 1, 250),
      event('RunTask', 2, 100, 90, 30),
    );
    expect(between!.ts).toBe(250);
    expect(other).toMatchObject({ ts: 100, dur: 90 });
  });

  it('counts the outer of two tasks, and never lengthens one', () => {
    const [outer, inner] = seen(event('RunTask', 1, 100, 80, 40), event('RunTask', 1, 120, 20, 20));
    expect(outer).toMatchObject({ dur: 40 });
    expect(inner).toMatchObject({ ts: 110, dur: 10 });
    // Clocks of two sorts may differ by a tick.
    expect(seen(event('RunTask', 1, 100, 20, 21))).toMatchObject([{ dur: 20 }]);
    expect(seen(event('RunTask', 1, 100, 20))).toMatchObject([{ dur: 20 }]);
  });
});
