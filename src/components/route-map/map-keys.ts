/** Directions of the arrow keys, x to the right and y down. */
export const ARROW_KEYS: Record<string, readonly [number, number]> = {
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};

/** What undo and redo keys ask for, if that is what this is. */
export function undoKey(event: KeyboardEvent): 'undone' | 'redone' | undefined {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  const key = event.key.toLowerCase();
  if (key !== 'z' && key !== 'y') return undefined;
  return key === 'z' && !event.shiftKey ? 'undone' : 'redone';
}
