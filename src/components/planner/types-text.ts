const TICKED = ['checkbox', 'radio', 'range', 'button', 'submit', 'file'];

/** Whether keys pressed there write text, which has an undo of its own. */
export function typesText(target: EventTarget | undefined): boolean {
  if (target instanceof HTMLInputElement) return !TICKED.includes(target.type);
  return target instanceof HTMLTextAreaElement || (target instanceof HTMLElement && target.isContentEditable);
}
