import * as v from 'valibot';
import { TEXT_LENGTH } from './text-length.ts';

/** A number from `least` to `most`, both included. Infinity and NaN are outside. */
export const between = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));

/** A number above `least`, up to and including `most`. */
export const above = (least: number, most: number) => v.pipe(v.number(), v.gtValue(least), v.maxValue(most));

/** A whole number from `least` to `most`, both included. */
export const count = (least: number, most: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));

export const text = v.pipe(v.string(), v.maxLength(TEXT_LENGTH));
export const id = v.pipe(v.string(), v.minLength(1), v.maxLength(TEXT_LENGTH));

/** A list of `least` to `most` entries; its length is judged before anything in it. */
export const list = <T extends v.GenericSchema>(entry: T, least: number, most: number) =>
  v.pipe(v.array(v.unknown()), v.minLength(least), v.maxLength(most), v.array(entry));

/** A word standing for a set of values, or the values. Chosen by what is given, so that each keeps its own problems. */
export const wordOr = <W extends v.GenericSchema<unknown, string>, T extends v.GenericSchema>(word: W, values: T) =>
  chosen([word, values], (given): W | T => (typeof given === 'string' ? word : values));

/**
 * One of several schemas, chosen by what is given. Whoever asks without a value, as the maker of the JSON schemas does,
 * gets all of them.
 */
export const chosen = <T extends v.GenericSchema>(all: readonly T[], pick: (given: unknown) => T) => {
  const any = v.union(all);
  return v.lazy((given): T | typeof any => (given === undefined ? any : pick(given)));
};

/** One set of fields where `key` is given, another where it is not, so that each keeps its own problems. */
export const objectWith = <K extends string, A extends v.GenericSchema, B extends v.GenericSchema>(
  key: K,
  having: A,
  lacking: B,
) =>
  chosen([having, lacking], (given): A | B =>
    typeof given === 'object' && given !== null && key in given ? having : lacking,
  );
