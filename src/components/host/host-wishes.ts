import type { ReactiveControllerHost } from 'lit';
import type { HostBoat, HostGiven, HostTaken } from './host-given.ts';
import type { HostProblems } from './host-problems.ts';

/** Attributes that are read here; the order is that of their problems. */
const READ = ['units', 'theme', 'center', 'zoom', 'tiles', 'forecast-source', 'reserve', 'boat', 'fleet', 'script'];
const PLAIN: HostGiven = {
  units: 'nautical',
  theme: '',
  center: '',
  zoom: undefined,
  tiles: '',
  forecastSource: '',
  reserve: '',
  boat: '',
  fleet: '',
  fleetFile: undefined,
  inline: '',
  boats: undefined,
};

/** What an element hands on of itself; only those with boats of their own name these. */
export type Wished = Omit<HostGiven, 'inline' | 'boats' | 'forecastSource'> &
  Partial<Pick<HostGiven, 'boats' | 'forecastSource'>>;

/**
 * What the page wishes by attributes and by a JSON script inside the element. What reads them is loaded only where a
 * page wishes something, so that a plain tag stays small.
 */
export class HostWishes {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #problems: HostProblems;
  readonly #taken: (taken: HostTaken, before: HostGiven) => void;
  /** What holds where a page wishes nothing. */
  readonly #usual: HostGiven;
  #given: HostGiven;
  #visit = 0;
  boats: readonly HostBoat[] = [];

  constructor(
    host: ReactiveControllerHost & HTMLElement,
    problems: HostProblems,
    taken: (taken: HostTaken, before: HostGiven) => void,
    usual: Partial<HostGiven> = {},
  ) {
    this.#host = host;
    this.#problems = problems;
    this.#taken = taken;
    this.#usual = { ...PLAIN, ...usual };
    this.#given = this.#usual;
  }

  /** Looks again; nothing happens while nothing changed. */
  async look(now: Wished): Promise<void> {
    // Read one by one: accessors of an element do not spread.
    const { units, theme, center, zoom, tiles, forecastSource, reserve, boat, fleet, fleetFile, boats } = now;
    // An attribute taken away leaves null.
    const given: HostGiven = {
      units: units ?? this.#usual.units,
      theme: theme ?? '',
      center: center ?? '',
      zoom: zoom ?? undefined,
      tiles: tiles ?? '',
      forecastSource: forecastSource ?? '',
      reserve: reserve ?? '',
      boat: boat ?? '',
      fleet: fleet ?? '',
      fleetFile,
      inline: inlineJson(this.#host),
      boats,
    };
    const before = this.#given;
    if (sameWishes(given, before)) return;
    this.#given = given;
    const visit = ++this.#visit;
    const { takeGiven } = await import('./host-given.ts');
    const taken = await takeGiven(given, new Date().toISOString().slice(0, 10));
    if (visit !== this.#visit) return;
    this.boats = taken.boats;
    this.#problems.tell(READ, taken.problems);
    this.#taken(taken, before);
  }
}

/** Text of the first JSON script that is a child; a host's content policy lets it be, as it is no program. */
export function inlineJson(host: HTMLElement): string {
  return host.querySelector(':scope > script[type="application/json"]')?.textContent ?? '';
}

function sameWishes(a: HostGiven, b: HostGiven): boolean {
  return (Object.keys(PLAIN) as (keyof HostGiven)[]).every((key) => a[key] === b[key]);
}
