import type { BoatProfile } from '../../core/trials/shapes.ts';
import type { HostProblems } from '../host/host-problems.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import type { Cards } from './cards.ts';
import { fetchProfile } from './open-file.ts';
import type { TripOnScreen } from './trip-on-screen.ts';
import { withProfile } from './with-profile.ts';

/** The measured boat that a file or an address brings into the trip on screen. */
export class MeasuredBoat {
  readonly #screen: TripOnScreen;
  readonly #cards: Cards;
  readonly #problems: HostProblems;
  #address = '';

  constructor(screen: TripOnScreen, cards: Cards, problems: HostProblems) {
    this.#screen = screen;
    this.#cards = cards;
    this.#problems = problems;
  }

  use(profile: BoatProfile): void {
    const trip = withProfile(this.#screen.trip, profile);
    this.#screen.replace({ trip, origin: {} }, words.boatOpened(profile.name));
    this.#cards.open('boat');
  }

  /** The boat at an address; of several asked for, the last. */
  async fetch(address: string): Promise<void> {
    this.#address = address;
    this.#problems.tell(['profile'], []);
    if (!address) return;
    await this.#screen.restored;
    const read = await fetchProfile(address);
    if (address !== this.#address) return;
    if (!read.ok) {
      const why = read.problems.slice(0, 3).map((problem) => `${problem.message}.`);
      this.#problems.tell(['profile'], [{ attribute: 'profile', message: [words.profileFailed, ...why].join(' ') }]);
    }
    // The one the device kept is not loaded again over what was changed since.
    else if (JSON.stringify(read.value.trials) !== JSON.stringify(this.#screen.trip.trials)) this.use(read.value);
  }
}
