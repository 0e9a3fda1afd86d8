/** The element's size, px. The page round an iframe gets `{ type: 'homeleg-size', height }` as a message: that of the whole page inside. */
export type SizeEvent = CustomEvent<{ width: number; height: number }>;

/** Tells of each size of an element, and the page round the frame of the height needed, until the function returned is called. */
export function tellSizes(element: HTMLElement): () => void {
  const page = document.documentElement;
  let last = '';
  const observer = new ResizeObserver(() => {
    const { width, height } = element.getBoundingClientRect();
    const whole = Math.ceil(page.getBoundingClientRect().height);
    const now = [width, height, whole].join();
    if (now === last || width === 0) return;
    last = now;
    const options = { detail: { width, height }, bubbles: true, composed: true };
    element.dispatchEvent(new CustomEvent('homeleg-size', options) satisfies SizeEvent);
    // A height is no secret, and a sandboxed frame does not know whose page it is on.
    if (window.parent !== window) window.parent.postMessage({ type: 'homeleg-size', height: whole }, '*');
  });
  observer.observe(element);
  observer.observe(page);
  return () => observer.disconnect();
}

declare global {
  interface HTMLElementEventMap {
    'homeleg-size': SizeEvent;
  }
}
