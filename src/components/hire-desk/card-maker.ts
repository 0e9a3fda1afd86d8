import { watchWorker } from '../worker-watch.ts';
import { type CardReport, type CardWork, cardWork } from './card-work.ts';

/**
 * Works out a card in a worker, or, where the host's policy or another origin refuses one, bit by bit on the page.
 * Returns what stops it; nothing is told after that.
 */
export function makeCard(asked: CardWork, told: (report: CardReport) => void): () => void {
  let wanted = true;
  let worker: Worker | undefined;
  let unwatch = (): void => {};
  const end = (): void => {
    unwatch();
    worker?.terminate();
    worker = undefined;
  };
  const tell = (report: CardReport): void => {
    if (!wanted) return;
    if (report.kind !== 'progress') end();
    told(report);
  };
  const onPage = (): void => {
    end();
    void inSlices(asked, tell, () => wanted);
  };
  try {
    worker = new Worker(new URL('./card-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<CardReport>) => tell(data));
    unwatch = watchWorker(worker, onPage);
    worker.postMessage(asked);
  } catch {
    onPage();
  }
  return () => {
    wanted = false;
    end();
  };
}

async function inSlices(asked: CardWork, tell: (report: CardReport) => void, wanted: () => boolean): Promise<void> {
  try {
    const work = cardWork(asked);
    for (;;) {
      await new Promise((resolve) => setTimeout(resolve, 0));
      if (!wanted()) return;
      const { done, value } = work.next();
      if (done) return tell({ kind: 'done', card: value });
      tell({ kind: 'progress', share: value });
    }
  } catch {
    tell({ kind: 'failed' });
  }
}
