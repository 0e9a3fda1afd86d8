import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { BoatProfile } from '../../core/trials/shapes.ts';
import type { Result } from '../../core/units/result.ts';
import { putBy } from '../store/put-by.ts';
import type { Sheet, Work } from './work.ts';

export type KeptWork = { readonly work: Work } | { readonly unreadable: true } | undefined;

/** Keeps the trials on this device under their own name, as the planner keeps its trip. */
export class WorkKeeper implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #key: () => string | undefined;
  #waiting: Work | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** What is there cannot be read, and there is no room to put it by: it stays. */
  #locked = false;
  /** The last attempt to keep something failed. */
  failed = false;

  constructor(host: ReactiveControllerHost, key: () => string | undefined) {
    this.#host = host;
    this.#key = key;
    host.addController(this);
  }

  hostConnected(): void {
    globalThis.addEventListener('pagehide', this.#flush);
  }

  hostDisconnected(): void {
    globalThis.removeEventListener('pagehide', this.#flush);
    this.#flush();
  }

  async load(): Promise<KeptWork> {
    const key = this.#key();
    if (!key) return undefined;
    let text: string | null = null;
    try {
      text = localStorage.getItem(key);
    } catch {
      return undefined;
    }
    if (text === null) return undefined;
    const work = await parsed(text);
    if (work) return { work };
    this.#locked = !putBy(key, text);
    return { unreadable: true };
  }

  /** Soon, not on every letter typed. */
  keep(work: Work): void {
    this.#waiting = work;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(this.#flush, 300);
  }

  readonly #flush = (): void => {
    clearTimeout(this.#timer);
    const key = this.#key();
    if (!this.#waiting || !key) return;
    const failed = this.#locked || !this.#put(key, JSON.stringify(this.#waiting));
    this.#waiting = undefined;
    if (failed !== this.failed) {
      this.failed = failed;
      this.#host.requestUpdate();
    }
  };

  #put(key: string, text: string): boolean {
    try {
      localStorage.setItem(key, text);
      return true;
    } catch {
      return false;
    }
  }
}

/** The evidence goes through the door of a profile; forms that no longer fit it are left closed. */
async function parsed(text: string): Promise<Work | undefined> {
  let kept: Partial<Work>;
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null) return undefined;
    kept = value;
  } catch {
    return undefined;
  }
  const { readProfile } = await import('../../core/files/profile-file.ts');
  const read: Result<BoatProfile> = readProfile(JSON.stringify(kept.profile ?? null));
  if (!read.ok) return undefined;
  const profile = read.value;
  const fits = (one: { setup?: unknown; load?: unknown } | undefined): boolean =>
    profile.trials.setups.some(({ id }) => id === one?.setup) && typeof one?.load === 'object';
  return {
    profile,
    origins: typeof kept.origins === 'object' && kept.origins !== null ? kept.origins : {},
    ...(kept.entry && fits(kept.entry) && Array.isArray(kept.entry.passes) && { entry: kept.entry }),
    ...(kept.refill && fits(kept.refill) && Array.isArray(kept.refill.spent) && { refill: kept.refill }),
    ...(kept.sheet && sheetFits(kept.sheet, profile) && { sheet: kept.sheet }),
  };
}

/** Every step is made with a setup and a load that are still there. */
function sheetFits({ steps, loads, done }: Partial<Sheet>, { trials }: BoatProfile): boolean {
  if (!Array.isArray(steps) || !Array.isArray(loads) || typeof done !== 'object') return false;
  const setups = new Set(trials.setups.map(({ id }) => id));
  const names = new Set((loads as Sheet['loads']).map(({ name }) => name));
  return (steps as Sheet['steps']).every(
    (step) => step.kind !== 'run' || (setups.has(step.setup) && names.has(step.load) && Number.isFinite(step.speed)),
  );
}
