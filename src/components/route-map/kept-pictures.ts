import { html } from 'lit';
import { mapWords as words } from './words.ts';

/** Also the name the worker of the site knows them by (src/offline/map-pictures.ts): while it exists, they are kept. */
const KEPT = 'homeleg-map-pictures';
/** How long the worker may take to say whether it keeps map pictures, ms; other workers never answer. */
const PATIENCE = 2000;

/** Whether the page's worker is one that keeps map pictures when asked; a page without such a worker offers nothing. */
export async function mayKeep(): Promise<boolean> {
  const worker = navigator.serviceWorker?.controller;
  if (!worker) return false;
  const { port1, port2 } = new MessageChannel();
  const answered = new Promise<boolean>((done) => {
    port1.onmessage = () => done(true);
    setTimeout(() => done(false), PATIENCE);
  });
  worker.postMessage({ type: 'MAY_KEEP_PICTURES' }, [port2]);
  return answered.finally(() => port1.close());
}

export function picturesKept(): Promise<boolean> {
  return caches.has(KEPT);
}

/** From now on keeps the pictures that are seen, or throws away what is kept. */
export async function keepPictures(on: boolean): Promise<void> {
  if (on) await caches.open(KEPT);
  else navigator.serviceWorker.controller?.postMessage({ type: 'FORGET_PICTURES' });
}

export function keepChoice(on: boolean, act: (on: boolean) => void) {
  return html`<label class="keep">
    <input type="checkbox" .checked=${on} @change=${(event: Event) => act((event.target as HTMLInputElement).checked)} />
    <span>${words.keepPictures} <span class="why">${words.keepPicturesWhy}</span></span>
  </label>`;
}
