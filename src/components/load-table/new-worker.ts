/** A worker for the table or a closer look. */
export function tableWorker(): Worker {
  return new Worker(new URL('./table-worker.ts', import.meta.url), { type: 'module' });
}
