/** A worker that says nothing for this long is given up, ms: far longer than any step takes on a slow phone. */
export const SILENCE = 20_000;

/**
 * Tells once when nothing more is to be hoped of a worker: it failed, what it says cannot be read, or it was ended from
 * outside, which shows only by its silence. Returns what ends the watch.
 */
export function watchWorker(worker: Worker, lost: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const heard = (): void => {
    clearTimeout(timer);
    timer = setTimeout(gone, SILENCE);
  };
  const end = (): void => {
    clearTimeout(timer);
    worker.removeEventListener('message', heard);
    // A policy that refuses workers says so by an error, not where one is made.
    for (const type of ['error', 'messageerror']) worker.removeEventListener(type, gone);
  };
  function gone(): void {
    end();
    lost();
  }
  worker.addEventListener('message', heard);
  for (const type of ['error', 'messageerror']) worker.addEventListener(type, gone);
  heard();
  return end;
}
