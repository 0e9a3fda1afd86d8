/** Steps from the slow end after a key of a slider; undefined for keys that are none. */
export function keyTarget(key: string, now: number, last: number): number | undefined {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return now + 1;
    case 'ArrowLeft':
    case 'ArrowDown':
      return now - 1;
    case 'PageUp':
      return now + 5;
    case 'PageDown':
      return now - 5;
    case 'Home':
      return 0;
    case 'End':
      return last;
    default:
      return undefined;
  }
}
