import { watchWorker } from './worker-watch.ts';

/** What is told of long work: how far it is, what came of it, or that nothing did. */
export type WorkReport<T> =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'done'; readonly value: T }
  | { readonly kind: 'failed' };

/** Work that yields the share done and returns what came of it. */
export type Stepwise<T> = Generator<number, T>;

interface Work<T> {
  /** Makes the worker that answers `asked` with reports. */
  readonly worker: () => Worker;
  readonly asked: unknown;
  /** The same work on the page; undefined where it cannot be done. */
  readonly onPage: () => Stepwise<T> | undefined;
}

/**
 * Long work beside the page, in a worker, or, where the host's policy or another origin refuses one or it falls silent,
 * bit by bit on the page. Returns what stops it; nothing is told after that, nor after the end.
 */
export function workBeside<T>(work: Work<T>, told: (report: WorkReport<T>) => void): () => void {
  let wanted = true;
  let worker: Worker | undefined;
  let unwatch = (): void => {};
  const end = (): void => {
    unwatch();
    worker?.terminate();
    worker = undefined;
  };
  const tell = (report: WorkReport<T>): void => {
    if (!wanted) return;
    if (report.kind !== 'progress') end();
    told(report);
  };
  const onPage = (): void => {
    end();
    void inSlices(work.onPage, tell, () => wanted);
  };
  try {
    worker = work.worker();
    worker.addEventListener('message', ({ data }: MessageEvent<WorkReport<T>>) => tell(data));
    unwatch = watchWorker(worker, onPage);
    worker.postMessage(work.asked);
  } catch {
    onPage();
  }
  return () => {
    wanted = false;
    end();
  };
}

/** Inside a worker: tells of work until its end. */
export function tellAll<T>(work: Stepwise<T>): void {
  const told = (report: WorkReport<T>): void => globalThis.postMessage(report);
  let step = work.next();
  for (; !step.done; step = work.next()) told({ kind: 'progress', share: step.value });
  told({ kind: 'done', value: step.value });
}

async function inSlices<T>(
  begin: Work<T>['onPage'],
  tell: (report: WorkReport<T>) => void,
  wanted: () => boolean,
): Promise<void> {
  try {
    const work = begin();
    if (!work) return tell({ kind: 'failed' });
    for (;;) {
      await new Promise((resolve) => setTimeout(resolve, 0));
      if (!wanted()) return;
      const { done, value } = work.next();
      if (done) return tell({ kind: 'done', value });
      tell({ kind: 'progress', share: value });
    }
  } catch {
    tell({ kind: 'failed' });
  }
}
