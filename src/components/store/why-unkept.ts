/** Why the device does not keep: it is full, a newer page has been here, or it is blocked. */
export type Unkept = 'full' | 'newer' | 'blocked';

export function whyUnkept(error: unknown): Unkept {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return name === 'QuotaExceededError' ? 'full' : name === 'VersionError' ? 'newer' : 'blocked';
}
