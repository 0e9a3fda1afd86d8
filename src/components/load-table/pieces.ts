import { watchWorker } from '../worker-watch.ts';
import type { GoOn } from './after-rest.ts';

/** What a worker tells: one piece after the other, then that it was the last. */
export type PieceReport<T> = { readonly piece: T } | { readonly done: true };

interface Work<Asked, T> {
  /** Makes the worker that answers `asked` with pieces. */
  readonly worker: () => Worker;
  readonly asked: Asked;
  /** The same pieces, made on the page. */
  readonly onPage: (asked: Asked) => Iterable<T>;
  readonly goOn: GoOn;
  /** Hears how many there are. */
  readonly told?: (count: number) => void;
}

/**
 * All pieces of some work, made in a worker, or, where the host's policy or another origin refuses one, bit by bit on
 * the page. Undefined where newer work waits.
 */
export async function pieces<Asked, T>(work: Work<Asked, T>): Promise<readonly T[] | undefined> {
  try {
    return await gathered(fromWorker<T>(work.worker(), work.asked), work);
  } catch {
    return gathered(work.onPage(work.asked), work);
  }
}

async function gathered<T>(
  source: AsyncIterable<T> | Iterable<T>,
  { goOn, told }: Pick<Work<unknown, T>, 'goOn' | 'told'>,
): Promise<readonly T[] | undefined> {
  const found: T[] = [];
  for await (const piece of source) {
    found.push(piece);
    if (!(await goOn())) return undefined;
    told?.(found.length);
  }
  return found;
}

async function* fromWorker<T>(worker: Worker, asked: unknown): AsyncGenerator<T> {
  const waiting: PieceReport<T>[] = [];
  let failed = false;
  let wake = (): void => {};
  worker.addEventListener('message', ({ data }: MessageEvent<PieceReport<T>>) => {
    waiting.push(data);
    wake();
  });
  const unwatch = watchWorker(worker, () => {
    failed = true;
    wake();
  });
  worker.postMessage(asked);
  try {
    for (;;) {
      const next = waiting.shift();
      if (next && 'done' in next) return;
      if (next) yield next.piece;
      else if (failed) throw new Error('The worker could not be had');
      else
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
    }
  } finally {
    unwatch();
    worker.terminate();
  }
}
