import { define } from '../components/define.ts';
import { turn } from '../components/turn.ts';

/** Brings an element of the page to life in a turn of its own: its code has just been read, and a slow phone is busy. */
export async function defineNext(tag: string, element: CustomElementConstructor): Promise<void> {
  await turn();
  define(tag, element);
}
