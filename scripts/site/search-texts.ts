import type { HTMLElement } from 'node-html-parser';
import type { BuiltPage } from './built-pages.ts';

/** One place that a search can lead to. Short names, for the file goes to every reader. */
export interface SearchText {
  /** Address, with the heading or point where there is one. */
  readonly to: string;
  readonly page: string;
  readonly heading: string;
  readonly text: string;
  /** Where it is not English. */
  readonly lang?: string;
}

/** Nothing to read in these: controls, pictures, what repeats on every page. */
const LEFT_OUT =
  'script, style, noscript, svg, nav, button, .back, .tally, .by-hand, .anchor, .tag, .law, .sources, .next, .every-check, [data-trip], [aria-hidden]';

/** What is written on the pages, cut at headings and at the points of checklists. */
export function searchTexts(pages: readonly BuiltPage[]): readonly SearchText[] {
  return pages.filter(({ listed, path }) => listed && path !== '/search/').flatMap(textsOf);
}

function textsOf({ path, html }: BuiltPage): readonly SearchText[] {
  const main = html.querySelector('main');
  if (!main) return [];
  for (const part of main.querySelectorAll(LEFT_OUT)) part.remove();
  // What stands in an element before its script is there.
  for (const part of main.querySelectorAll('*')) if (part.tagName.startsWith('HOMELEG-')) part.remove();
  const lang = html.querySelector('html')?.getAttribute('lang') ?? 'en';
  const page = words(main.querySelector('h1')?.text ?? '');
  const about = html.querySelector('meta[name="description"]')?.getAttribute('content') ?? '';
  const texts = [{ to: path, page, heading: '', parts: [about] }];
  // In the order of the page; what stands inside another block is told with it.
  const blocks = main.querySelectorAll('h1, h2, h3, p, li, dt, dd, td, th, figcaption, caption');
  for (const block of blocks) {
    if (blocks.some((other) => other !== block && holds(other, block))) continue;
    const text = sentences(block.structuredText.split('\n'));
    const last = texts.at(-1)!;
    if (block.tagName === 'H1' || text === '' || text === about) continue;
    if (/^H[23]$/.test(block.tagName)) {
      texts.push({ to: block.id ? `${path}#${block.id}` : last.to, page, heading: text, parts: [] });
    } else if (block.tagName === 'LI' && block.id) {
      texts.push({ to: `${path}#${block.id}`, page, heading: last.heading, parts: [text] });
    } else last.parts.push(text);
  }
  return texts
    .filter(({ heading, parts }) => heading !== '' || parts.length > 0)
    .map(({ parts, ...place }) => ({ ...place, text: sentences(parts), ...(lang !== 'en' && { lang }) }));
}

function holds(outer: HTMLElement, inner: HTMLElement): boolean {
  for (let at = inner.parentNode; at; at = at.parentNode) if (at === outer) return true;
  return false;
}

/** Pieces put into one line, each with a stop at its end. */
function sentences(pieces: readonly string[]): string {
  const told = pieces.map(words).filter(Boolean);
  return told.map((piece, at) => (at < told.length - 1 && !/[.:;?!…]$/.test(piece) ? `${piece}.` : piece)).join(' ');
}

function words(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
