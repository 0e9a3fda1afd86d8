/** A language as the elements speak it: its words by group and key, and the tag by which numbers and dates are written. */
export interface Language {
  readonly tag: string;
  /** What is missing here is said in English. */
  readonly words: Readonly<Record<string, object>>;
  /** Whether somebody whose mother tongue it is has checked the words that keep people safe. */
  readonly reviewed: boolean;
}

/** Words of any language in the place of English ones: same keys, same arguments. */
export type Spoken<T> = T extends (...given: infer G) => infer R
  ? (...given: G) => Spoken<R>
  : T extends string
    ? string
    : T extends object
      ? { readonly [K in keyof T]: Spoken<T[K]> }
      : T;

export const ENGLISH: Language = { tag: 'en', words: {}, reviewed: true };

let current = ENGLISH;
const whole = new WeakMap<object, object>();

/**
 * A group of words, given in English under the name of its constant; a key is looked up in the language spoken at that
 * moment. So words are read where they are shown, never kept from when a module was loaded.
 */
// @__NO_SIDE_EFFECTS__
export function spoken<const T extends object>(group: string, english: T): Spoken<T> {
  return new Proxy(english, {
    get: (_, key) => Reflect.get(inCurrent(group, english), key),
  }) as Spoken<T>;
}

/** What `say` returns, made in that language. Only what is read before it returns: not across an `await`. */
export function speak<T>(language: Language, say: () => T): T {
  const before = current;
  current = language;
  try {
    return say();
  } finally {
    current = before;
  }
}

/** From here on, and outside of `speak`, this language is spoken. */
export function speakOn(language: Language): void {
  current = language;
}

/** The language spoken just now. */
export function spokenNow(): Language {
  return current;
}

function inCurrent(group: string, english: object): object {
  const theirs = current.words[group];
  if (!theirs) return english;
  let both = whole.get(theirs);
  if (!both) {
    both = completed(theirs, english);
    whole.set(theirs, both);
  }
  return both;
}

/** Theirs, and English where they have nothing. */
function completed(theirs: object, english: object): object {
  if (Array.isArray(english)) return theirs;
  const both: Record<string, unknown> = { ...theirs };
  for (const [key, word] of Object.entries(english)) {
    const their = both[key];
    if (their === undefined) both[key] = word;
    else if (typeof word === 'object' && word !== null) both[key] = completed(their as object, word);
  }
  return both;
}
