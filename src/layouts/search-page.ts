import { searchWords as words } from '../components/words/en-site.ts';
import { excerpt } from './excerpt.ts';
import type { Place } from './searching.ts';

/** Most places shown; more than that nobody reads. */
const MOST = 40;

/** Finds while typing; the words stand in the address, so that a search can be kept and gone back to. */
export function enliven(form: HTMLFormElement, list: HTMLElement, status: HTMLElement): void {
  const field = form.querySelector('input')!;
  field.value = new URLSearchParams(location.search).get('q') ?? '';
  let search: ((asked: string) => readonly Place[]) | undefined;
  let coming = false;

  function show(): void {
    const asked = field.value.trim();
    const found = asked && search ? search(asked) : [];
    list.replaceChildren(...found.slice(0, MOST).map((place) => entry(place, asked)));
    status.textContent = asked === '' ? '' : search ? words.found(found.length, asked, MOST) : words.loading;
    history.replaceState(null, '', asked === '' ? location.pathname : `?q=${encodeURIComponent(asked)}`);
    if (asked !== '' && !search && !coming) void fetchTexts();
  }

  // Once somebody asks; the page is there before.
  async function fetchTexts(): Promise<void> {
    coming = true;
    try {
      const [{ searchOf }, texts] = await Promise.all([import('./searching.ts'), fetch('/search.json')]);
      const places: readonly Place[] = await texts.json();
      const { lang } = document.documentElement;
      search = searchOf(places.filter((place) => (place.lang ?? 'en') === lang));
      show();
    } catch {
      status.textContent = words.failed;
    }
    coming = false;
  }

  form.addEventListener('submit', (event) => {
    event.preventDefault();
    show();
    list.querySelector('a')?.focus();
  });
  field.addEventListener('input', show);
  field.focus({ preventScroll: true });
  show();
}

function entry({ to, page, heading, text }: Place, asked: string): HTMLElement {
  const point = document.createElement('li');
  const link = document.createElement('a');
  link.href = to;
  link.textContent = heading ? `${page}: ${heading}` : page;
  const told = document.createElement('p');
  told.textContent = excerpt(text, asked);
  point.append(link, told);
  return point;
}
