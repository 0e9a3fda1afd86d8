/** Whether two plain records say the same, whatever the order of their fields; an absent field is one that is undefined. */
export function sameFigures(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  const [left, right] = [a as Record<string, unknown>, b as Record<string, unknown>];
  return [...names].every((name) => sameFigures(left[name], right[name]));
}
