/**
 * Puts what was kept under `key` and cannot be read by, under a name of its own: a later version may read it. What was put
 * by before stays. False where the device keeps no more; then nothing may take the place of what is there.
 */
export function putBy(key: string, text: string): boolean {
  const name = `${key}-unreadable`;
  try {
    const before = localStorage.getItem(name);
    if (before === null) localStorage.setItem(name, text);
    else if (before !== text) localStorage.setItem(`${name}-${Date.now()}`, text);
    return true;
  } catch {
    return false;
  }
}
