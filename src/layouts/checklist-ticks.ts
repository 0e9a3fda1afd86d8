/** What is kept of one checklist on this device. */
interface Kept {
  readonly ticked: readonly string[];
  readonly drive: string;
  /** Time of the last tick, ms since 1970. */
  readonly at: number;
}

// A list ticked on another day says nothing about today.
const stale = 12 * 3600 * 1000;

/** Keeps the ticks of a checklist on the device, counts them, and offers to take a reset back. Without it the list still ticks. */
export function keepTicks(form: HTMLFormElement): void {
  const key = `homeleg-checklist-${form.dataset.list}`;
  const boxes = [...form.querySelectorAll<HTMLInputElement>('input[type="checkbox"]')];
  const status = form.querySelector<HTMLElement>('[data-status]')!;
  const count = form.querySelector<HTMLElement>('[data-count]')!;
  const bar = form.querySelector<HTMLProgressElement>('progress')!;
  const undo = form.querySelector<HTMLButtonElement>('[data-undo]')!;
  let cleared: Kept | undefined;

  const concerned = () => boxes.filter((box) => box.checkVisibility());

  function show(): void {
    const shown = concerned();
    const done = shown.filter((box) => box.checked).length;
    count.textContent = `${done} of ${shown.length} done`;
    bar.max = shown.length;
    bar.value = done;
    undo.hidden = cleared === undefined;
  }

  function now(): Kept {
    return {
      ticked: boxes.filter((box) => box.checked).map((box) => box.name),
      drive: String(new FormData(form).get('drive') ?? ''),
      at: Date.now(),
    };
  }

  function put(kept: Kept): void {
    for (const box of boxes) box.checked = kept.ticked.includes(box.name);
    for (const choice of form.querySelectorAll<HTMLInputElement>('input[name="drive"]')) {
      choice.checked = choice.value === kept.drive;
    }
  }

  const kept = read(key);
  if (kept) {
    put(kept);
    if (kept.ticked.length > 0 && Date.now() - kept.at > stale) {
      const day = new Intl.DateTimeFormat(document.documentElement.lang, { dateStyle: 'long', timeStyle: 'short' });
      status.textContent = `These ticks are from ${day.format(kept.at)}. Start afresh with “Clear all”.`;
    }
  }

  form.addEventListener('change', () => {
    cleared = undefined;
    status.textContent = write(key, now())
      ? ''
      : 'This browser does not let the page keep ticks; they last until it is closed.';
    show();
  });

  form.addEventListener('reset', () => {
    const before = now();
    // The boxes are cleared only after this event.
    setTimeout(() => {
      cleared = before.ticked.length > 0 ? before : undefined;
      put({ ticked: [], drive: before.drive, at: before.at });
      write(key, now());
      status.textContent = 'All ticks cleared.';
      show();
    });
  });

  undo.addEventListener('click', () => {
    if (cleared) put(cleared);
    cleared = undefined;
    write(key, now());
    status.textContent = 'Ticks are back.';
    show();
    form.querySelector<HTMLElement>('[type="reset"]')?.focus();
  });

  const print = form.querySelector<HTMLButtonElement>('[data-print]')!;
  print.addEventListener('click', () => window.print());
  for (const part of form.querySelectorAll<HTMLElement>('[data-scripted]')) part.hidden = false;
  show();
}

// Reading or writing throws where a page may keep nothing: private windows, sandboxed frames, full storage.
function read(key: string): Kept | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    return isKept(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

function write(key: string, kept: Kept): boolean {
  try {
    localStorage.setItem(key, JSON.stringify(kept));
    return true;
  } catch {
    return false;
  }
}

function isKept(value: unknown): value is Kept {
  const kept = value as Partial<Kept> | null;
  return (
    typeof kept === 'object' &&
    kept !== null &&
    Array.isArray(kept.ticked) &&
    typeof kept.drive === 'string' &&
    typeof kept.at === 'number'
  );
}
