/** What a point may depend on. */
export const CONDITIONS = [
  'petrol',
  'electric',
  'two-stroke',
  'four-stroke',
  'portable-tank',
  'fixed-tank',
  'lithium',
  'lead-acid',
  'inflatable',
  'alone',
  'crew',
  'children',
  'dog',
  'sea',
  'fresh',
  'stream',
  'fresh-wind',
  'cold-water',
  'dark',
  'one-way',
] as const;

export type Condition = (typeof CONDITIONS)[number];

/** Whether each condition holds; undefined: the trip does not tell. */
export type Holding = Readonly<Record<Condition, boolean | undefined>>;

export interface Point {
  /** Its link, and the name under which its tick is kept. */
  readonly id: string;
  readonly text: string;
  readonly why?: string | undefined;
  /** All of them must hold; absent: it concerns everybody. */
  readonly when?: readonly Condition[] | undefined;
}

export interface Section {
  readonly title: string;
  readonly note?: string | undefined;
  readonly items: readonly Point[];
}

export interface Checklist {
  readonly title: string;
  readonly summary: string;
  readonly sections: readonly Section[];
  readonly sources: readonly string[];
}
