/** What a press on something movable turned into. Offsets are CSS pixels from where the press began. */
export interface Follow {
  begin(): void;
  move(x: number, y: number): void;
  end(): void;
  cancel(): void;
  /** Presses to follow; all if absent. */
  accepts?(event: PointerEvent): boolean;
}

/** Pixels within which a press is a tap: a finger rolls more than a mouse. */
const SLOP = { mouse: 3, other: 8 } as const;

/**
 * Follows one pointer from press to release until `signal` aborts; moves come at most once per frame. After a drag the
 * click that browsers send is swallowed, so a click listener on `element` hears taps only. Returns a way to break off,
 * for Escape; the pointer stays captured until release, or its click would land on whatever is below.
 */
export function followPointer(element: HTMLElement, on: Follow, signal: AbortSignal): () => void {
  let press: { id: number; x: number; y: number; slop: number } | undefined;
  let last = { x: 0, y: 0 };
  let dragging = false;
  let frame = 0;

  const flush = () => {
    frame = 0;
    on.move(last.x, last.y);
  };
  const finish = (how: 'end' | 'cancel') => {
    if (!press) return;
    press = undefined;
    const unseen = frame !== 0;
    cancelAnimationFrame(frame);
    frame = 0;
    if (!dragging) return;
    if (unseen && how === 'end') flush();
    on[how]();
  };
  const listen = <K extends keyof HTMLElementEventMap>(type: K, heard: (event: HTMLElementEventMap[K]) => void) =>
    element.addEventListener(type, heard, { signal, capture: type === 'click' });

  listen('pointerdown', (event) => {
    if (press || event.button !== 0 || !event.isPrimary) return;
    dragging = false;
    if (on.accepts && !on.accepts(event)) return;
    const slop = event.pointerType === 'mouse' ? SLOP.mouse : SLOP.other;
    press = { id: event.pointerId, x: event.clientX, y: event.clientY, slop };
    element.setPointerCapture(event.pointerId);
  });
  listen('pointermove', (event) => {
    if (!press || event.pointerId !== press.id) return;
    last = { x: event.clientX - press.x, y: event.clientY - press.y };
    if (!dragging && Math.hypot(last.x, last.y) < press.slop) return;
    if (!dragging) on.begin();
    dragging = true;
    frame ||= requestAnimationFrame(flush);
  });
  listen('pointerup', () => finish('end'));
  listen('pointercancel', () => finish('cancel'));
  listen('lostpointercapture', () => finish('cancel'));
  listen('click', (event) => {
    if (!dragging) return;
    dragging = false;
    event.stopImmediatePropagation();
  });
  signal.addEventListener('abort', () => finish('cancel'));
  return () => finish('cancel');
}
