/** Whether this browser has a share sheet. */
export function canSend(): boolean {
  return typeof navigator !== 'undefined' && typeof navigator.share === 'function';
}

/** Opens the share sheet; true as well where the user closed it. */
export async function sent(message: ShareData): Promise<boolean> {
  try {
    await navigator.share(message);
    return true;
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError';
  }
}

/** Copies a text; false where the browser does not let the page. */
export async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
