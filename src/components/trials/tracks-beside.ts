import { watchWorker } from '../worker-watch.ts';
import { readTracks, type TextFile, type TracksRead } from './track-reader.ts';
import type { WorkerTold } from './track-worker.ts';

/**
 * Reads tracks in a worker, so that the page stays alive; where there can be none, here and bit by bit. Aborting ends
 * it at once, and undefined comes back.
 */
export async function tracksBeside(
  files: readonly TextFile[],
  told: (share: number, file: string) => void,
  signal: AbortSignal,
): Promise<TracksRead | undefined> {
  const texts = await Promise.all(files.map(async (file) => ({ name: file.name, content: await file.text() })));
  if (signal.aborted) return undefined;
  const worker = made();
  const here = () =>
    readTracks(
      texts.map(({ name, content }) => ({ name, text: async () => content })),
      Date.now() / 1000,
      told,
      () => !signal.aborted,
    );
  if (!worker) return here();
  let unwatch = (): void => {};
  const read = await new Promise<TracksRead | undefined | 'failed'>((resolve) => {
    signal.addEventListener('abort', () => resolve(undefined));
    unwatch = watchWorker(worker, () => resolve('failed'));
    worker.addEventListener('message', ({ data }: MessageEvent<WorkerTold>) => {
      if ('share' in data) told(data.share, data.file);
      else resolve('read' in data ? data.read : 'failed');
    });
    worker.postMessage(texts);
  });
  unwatch();
  worker.terminate();
  return read === 'failed' ? here() : read;
}

/** Undefined where the page's policy or its sandbox allows none. */
function made(): Worker | undefined {
  try {
    return new Worker(new URL('./track-worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return undefined;
  }
}
