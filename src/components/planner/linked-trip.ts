import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Trip } from '../../core/trip/shapes.ts';
import type { Result } from '../../core/units/result.ts';

/** On a page with several planners the first one opens the links. */
let taker: LinkedTrip | undefined;

/** Opens the trip that a link brings in the fragment of the page's address, now and when the fragment becomes another. */
export class LinkedTrip implements ReactiveController {
  readonly #told: (read: Result<Trip>) => Promise<void>;

  /** `told` hears of each link; once it has taken a trip in, the fragment is taken off the address. */
  constructor(host: ReactiveControllerHost, told: (read: Result<Trip>) => Promise<void>) {
    this.#told = told;
    host.addController(this);
  }

  hostConnected(): void {
    taker ??= this;
    if (taker !== this) return;
    globalThis.addEventListener('hashchange', this.#look);
    void this.#look();
  }

  hostDisconnected(): void {
    if (taker === this) taker = undefined;
    globalThis.removeEventListener('hashchange', this.#look);
  }

  readonly #look = async (): Promise<void> => {
    const fragment = location.hash;
    if (!/[#&]trip=/.test(fragment)) return;
    const read = await opened(fragment);
    await this.#told(read);
    // A reload must not put the link's trip over what was changed since.
    if (read.ok && location.hash === fragment) {
      history.replaceState(history.state, '', location.pathname + location.search);
    }
  };
}

async function opened(fragment: string): Promise<Result<Trip>> {
  try {
    const { readShareLink } = await import('../../core/files/share-link.ts');
    return readShareLink(fragment);
  } catch {
    const message = 'What opens links could not be loaded. Reload the page when the network is back';
    return { ok: false, problems: [{ code: 'not-loaded', path: '', message }] };
  }
}
