import { define } from '../components/define.ts';
import { afterPicture, turn } from '../components/turn.ts';
import { speakPage } from './speak-page.ts';

/**
 * Brings an element of the page to life once the page itself is on the screen: its code is fetched, read and run after
 * what can be read already. A page in the background has no picture to wait for, one that is covered may get none.
 */
export async function bring(tag: string, load: () => Promise<CustomElementConstructor>): Promise<void> {
  if (!document.hidden) await Promise.race([afterPicture(), patience()]);
  // With its words: it should not be there and empty while they come.
  const [element] = await Promise.all([load(), speakPage()]);
  await turn();
  define(tag, element);
}

function patience(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 2000));
}
