/**
 * A trace of the browser in which every task of a page lasts as long as the processor worked on it, not as long as other
 * programs made it wait: on a machine of few cores the one who measures takes the processor from who is measured, and a
 * simulated phone multiplies that wait by four.
 */

/** What we read of an event of a trace: times are microseconds, `tdur` of the thread's own time. */
export interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

interface Task {
  readonly from: number;
  readonly to: number;
  /** Own time over time on the clock, at most 1. */
  readonly share: number;
}

/** The same events; what happened inside a task of a page's main thread is drawn together with it, all else stays. */
export function inOwnTime<Event extends TraceEvent>(events: readonly Event[]): readonly Event[] {
  const threads = new Map<string, Task[]>();
  for (const { name, args, pid, tid } of events) {
    if (name === 'thread_name' && args?.name === 'CrRendererMain') threads.set(`${pid} ${tid}`, []);
  }
  const tasks = events.filter(({ name, ph }) => ph === 'X' && name.endsWith('RunTask'));
  for (const { pid, tid, ts, dur = 0, tdur = dur } of tasks.toSorted((a, b) => a.ts - b.ts)) {
    const own = threads.get(`${pid} ${tid}`);
    // Of tasks inside one another the outer counts.
    if (!own || dur === 0 || ts < (own.at(-1)?.to ?? 0)) continue;
    own.push({ from: ts, to: ts + dur, share: Math.min(tdur / dur, 1) });
  }
  return events.map((event) => {
    const task = taskAt(threads.get(`${event.pid} ${event.tid}`) ?? [], event.ts);
    if (!task) return event;
    const ts = task.from + (event.ts - task.from) * task.share;
    return { ...event, ts, ...(event.dur !== undefined && { dur: event.dur * task.share }) };
  });
}

function taskAt(tasks: readonly Task[], ts: number): Task | undefined {
  let low = 0;
  let high = tasks.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (tasks[middle]!.from <= ts) low = middle + 1;
    else high = middle;
  }
  const task = tasks[low - 1];
  return task && ts <= task.to ? task : undefined;
}
