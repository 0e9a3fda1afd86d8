/** Hosts and networks that only this computer, or only this house, can reach. */
const HERE =
  /^(localhost|.*\.localhost|.*\.local|.*\.internal|127(\.\d+){3}|0\.0\.0\.0|10(\.\d+){3}|192\.168(\.\d+){2}|172\.(1[6-9]|2\d|3[01])(\.\d+){2}|169\.254(\.\d+){2}|\[.*\])$/i;

/** Whether a hirer's phone can open a page of this address: one of the web, not a file, and the desk is on line. */
export function reachable(address: string, onLine: boolean): boolean {
  let url: URL;
  try {
    url = new URL(address);
  } catch {
    return false;
  }
  if (url.protocol !== 'https:' && url.protocol !== 'http:') return false;
  return onLine && !HERE.test(url.hostname);
}
