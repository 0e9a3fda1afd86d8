import { Workbox } from 'workbox-window';
import { offlineWords as words } from '../components/words/en-site.ts';

/** Elements that keep on the device what is typed into them; whatever else was typed is lost with the page. */
const KEPT = 'homeleg-planner, homeleg-trials, form.checklist';
/** A page that stays open asks at most this often whether there is a new version, ms. */
const ASK_AGAIN = 3_600_000;

/** Keeps the site on the device, and tells of new versions in a bar. Nothing is loaded again unless the reader says so. */
export function keepOffline(bar: HTMLElement): void {
  const [take, later] = bar.querySelectorAll('button');
  const said = bar.querySelector('p')!;
  let typed = false;
  let pressed = false;
  for (const type of ['input', 'change']) {
    document.addEventListener(type, () => {
      typed = true;
    });
  }

  const worker = new Workbox('/sw.js');
  worker.addEventListener('waiting', () => {
    tell(words.ready, words.use, () => {
      const lost = typed && !document.querySelector(KEPT);
      if (lost) tell(words.lost, words.anyway, letIn);
      else letIn();
    });
  });
  // Let in, here or in another tab.
  worker.addEventListener('controlling', ({ isUpdate, isExternal }) => {
    if (pressed) location.reload();
    else if (isUpdate || isExternal) tell(words.other, words.reload, () => location.reload());
  });

  function letIn(): void {
    pressed = true;
    worker.messageSkipWaiting();
  }

  function tell(text: string, name: string, press: () => void): void {
    said.textContent = text;
    take!.textContent = name;
    take!.onclick = press;
    later!.textContent = words.later;
    later!.onclick = () => {
      bar.hidden = true;
    };
    bar.hidden = false;
  }

  let asked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - asked < ASK_AGAIN) return;
    asked = Date.now();
    worker.update().catch(() => {
      // Without a network there is nothing to learn.
    });
  });
  worker.register().catch(() => {
    // Private windows, sandboxed frames, a host without https: the site works, with a network.
  });
}
