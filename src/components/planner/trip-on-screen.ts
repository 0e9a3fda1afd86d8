import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Trip } from '../../core/trip/shapes.ts';
import type { Result } from '../../core/units/result.ts';
import { stillLive } from '../route-map/route-history.ts';
import { linkWords } from '../words/en-link.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import { DraftKeeper } from './draft-keeper.ts';
import { type CraftOrigin, type Draft, firstDraft } from './first-trip.ts';
import { LinkedTrip } from './linked-trip.ts';
import { sameTrip, TripHistory } from './trip-history.ts';

interface Screen {
  readonly host: ReactiveControllerHost;
  /** Under which name the device keeps the trip, if it does. */
  readonly kept: () => string | undefined;
  /** Words in the language of the screen, also after an `await`. */
  readonly say: (text: () => string) => string;
}

/** The trip on screen: changed, stepped back and on, kept on the device, and replaced by another one. */
export class TripOnScreen implements ReactiveController {
  readonly #screen: Screen;
  readonly #keeper: DraftKeeper;
  #history = new TripHistory();
  #restored: Promise<void> | undefined;
  draft: Draft = firstDraft();
  /** Trips put in place of another one. */
  count = 0;
  message = '';
  /** The trip on screen took the place of another one, which is one step back. */
  cleared = false;
  /** The trip put by when a link was opened. */
  aside: Draft | undefined;

  constructor(screen: Screen) {
    this.#screen = screen;
    this.#keeper = new DraftKeeper(screen.host, screen.kept);
    screen.host.addController(this);
    new LinkedTrip(screen.host, (read) => this.#linked(read));
  }

  get trip(): Trip {
    return this.draft.trip;
  }

  get canUndo(): boolean {
    return this.#history.canUndo;
  }

  get canRedo(): boolean {
    return this.#history.canRedo;
  }

  /** The device refused to keep what was entered. */
  get notKept(): boolean {
    return this.#keeper.failed;
  }

  /** Done once what the device kept is on screen. */
  get restored(): Promise<void> | undefined {
    return this.#restored;
  }

  hostConnected(): void {
    this.#restored ??= this.#restore();
  }

  /** The page's own trip, with nothing before it. */
  set(trip: Trip): void {
    this.#history = new TripHistory();
    this.#show({ trip, origin: {} });
  }

  /** Puts a changed trip on screen, keeps it and has it worked out. */
  change(trip: Trip, origin: CraftOrigin = this.draft.origin, whole = false): void {
    const from = this.draft;
    this.#put({ trip, origin });
    const live = stillLive(trip.route.waypoints);
    this.#history.changed(from, this.draft, { at: performance.now(), live, whole });
  }

  /** Another trip in place of this one, which can be taken back. */
  replace(draft: Draft, message: string): void {
    this.count++;
    this.change(draft.trip, draft.origin, true);
    this.message = message;
    this.cleared = true;
  }

  stepped(what: 'undone' | 'redone'): void {
    const step = what === 'undone' ? this.#history.undo(this.draft) : this.#history.redo(this.draft);
    if (!step) return;
    if (step.whole) this.count++;
    this.#put(step.draft);
  }

  tell(message: string): void {
    this.message = message;
    this.#screen.host.requestUpdate();
  }

  takeAside(): void {
    const { aside } = this;
    if (!aside) return;
    this.replace(aside, linkWords.asideBack);
    this.dropAside();
  }

  dropAside(): void {
    this.#keeper.dropAside();
    this.aside = undefined;
    this.#screen.host.requestUpdate();
  }

  #put(draft: Draft): void {
    this.message = '';
    this.cleared = false;
    this.#show(draft);
    this.#keeper.keep(draft);
  }

  #show(draft: Draft): void {
    this.draft = draft;
    this.#screen.host.requestUpdate();
  }

  async #restore(): Promise<void> {
    const before = this.draft;
    const kept = await this.#keeper.load();
    const aside = await this.#keeper.aside();
    // Taken back in another way meanwhile.
    if (kept && 'draft' in kept && aside && sameTrip(aside, kept.draft)) this.#keeper.dropAside();
    else this.aside = aside;
    if (this.aside) this.#screen.host.requestUpdate();
    // Whoever set a trip or began to type meanwhile goes first.
    if (!kept || this.draft !== before) return;
    if ('draft' in kept) {
      this.count++;
      this.#show(kept.draft);
    } else this.tell(words.unreadable);
  }

  async #linked(read: Result<Trip>): Promise<void> {
    await this.#restored;
    const { say } = this.#screen;
    if (!read.ok) {
      const why = read.problems.slice(0, 3).map(({ message }) => `${message}.`);
      this.tell(say(() => [linkWords.notOpened, ...why].join(' ')));
      return;
    }
    const before = this.draft;
    const worth = !sameTrip(before, firstDraft());
    if (worth) this.#keeper.setAside(before);
    this.replace(
      { trip: read.value, origin: {} },
      say(() => (worth ? linkWords.openedKept : linkWords.opened)),
    );
    this.cleared = worth;
  }
}
