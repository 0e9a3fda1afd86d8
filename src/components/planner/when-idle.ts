/** Does something when the page has nothing better to do, or a second after. */
export function whenIdle(work: () => unknown): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(() => void work(), { timeout: 5000 });
  else setTimeout(() => void work(), 1000);
}
