import type { Sampled } from '../../core/trip/risk.ts';
import type { Ask } from '../further/ask.ts';
import { watchWorker } from '../worker-watch.ts';
import { playing } from './playing.ts';

export type PlayReport =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'done'; readonly sampled: Sampled }
  | { readonly kind: 'failed' };

/**
 * Plays a trip over in a worker, or, where the host's policy or another origin refuses one, bit by bit on the page.
 * Returns what stops it; nothing is told after that.
 */
export function play(ask: Ask, told: (report: PlayReport) => void): () => void {
  let wanted = true;
  let worker: Worker | undefined;
  let unwatch = (): void => {};
  const end = (): void => {
    unwatch();
    worker?.terminate();
    worker = undefined;
  };
  const tell = (report: PlayReport): void => {
    if (!wanted) return;
    if (report.kind !== 'progress') end();
    told(report);
  };
  const onPage = (): void => {
    end();
    void inSlices(ask, tell, () => wanted);
  };
  try {
    worker = new Worker(new URL('./play-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<PlayReport>) => tell(data));
    unwatch = watchWorker(worker, onPage);
    worker.postMessage({ trip: ask.trip, file: ask.file });
  } catch {
    onPage();
  }
  return () => {
    wanted = false;
    end();
  };
}

async function inSlices({ standing }: Ask, tell: (report: PlayReport) => void, wanted: () => boolean): Promise<void> {
  if (!standing) return tell({ kind: 'failed' });
  try {
    const work = playing(standing);
    for (;;) {
      await new Promise((resolve) => setTimeout(resolve, 0));
      if (!wanted()) return;
      const { done, value } = work.next();
      if (done) return tell({ kind: 'done', sampled: value });
      tell({ kind: 'progress', share: value });
    }
  } catch {
    tell({ kind: 'failed' });
  }
}
