import { type Chosen, markupOf, sheetOf } from './snippet.ts';

const DEFINE = import.meta.glob('../components/*/define.ts');

/** What the elements tell a page; the newest first, and no more than fit. */
const TOLD_AT_MOST = 6;
const DETAIL_AT_MOST = 160;

/** Makes the form choose: the element beside it, and the snippet below, follow every choice. */
export function buildSnippets(root: HTMLElement): void {
  const part = <E extends HTMLElement = HTMLElement>(name: string) => root.querySelector<E>(`[data-${name}]`)!;
  const form = root.querySelector('form')!;
  const live = part('live');
  const told = part('told');
  const status = part('status');
  let visit = 0;

  const chosen = (): Chosen => {
    const data = new FormData(form);
    const tag = String(data.get('element'));
    const attributes: (readonly [string, string | true])[] = [];
    for (const field of form.querySelectorAll<HTMLInputElement | HTMLSelectElement>(`[data-for="${tag}"] [name]`)) {
      if (field instanceof HTMLInputElement && field.type === 'checkbox') {
        if (field.checked) attributes.push([field.dataset.attribute!, true]);
      } else if (field.value.trim() !== '') attributes.push([field.dataset.attribute!, field.value.trim()]);
    }
    const lang = String(data.get('lang'));
    if (lang) attributes.push(['lang', lang]);
    const scheme = String(data.get('scheme'));
    const styles: (readonly [string, string])[] = [];
    if (scheme) styles.push(['color-scheme', scheme]);
    if (data.get('own-accent')) styles.push(['--homeleg-accent', String(data.get('accent'))]);
    return { tag, folder: String(data.get('folder')), attributes, styles };
  };

  const show = (what: Chosen): void => {
    for (const fields of form.querySelectorAll<HTMLFieldSetElement>('[data-for]')) {
      const ours = fields.dataset.for === what.tag;
      fields.hidden = !ours;
      fields.disabled = !ours;
    }
    part('markup').textContent = markupOf(what);
    const sheet = sheetOf(what);
    part('sheet').textContent = sheet;
    part('sheet-block').hidden = sheet === '';
    status.textContent = '';
  };

  /** A new element for every choice, as a page would have it from the start. */
  const place = async (what: Chosen): Promise<void> => {
    const mine = ++visit;
    await DEFINE[`../components/${what.tag.replace('homeleg-', '')}/define.ts`]?.();
    if (mine !== visit) return;
    const element = document.createElement(what.tag);
    // What the reader keeps on this site is not for trying out.
    element.setAttribute('keep', 'none');
    for (const [name, value] of what.attributes) element.setAttribute(name, value === true ? '' : value);
    for (const [name, value] of what.styles) element.style.setProperty(name, value);
    live.replaceChildren(element);
    live.dataset.scheme = what.styles.find(([name]) => name === 'color-scheme')?.[1] ?? '';
  };

  const hear = (event: Event): void => {
    if (!(event instanceof CustomEvent)) return;
    const item = document.createElement('li');
    const name = document.createElement('code');
    name.textContent = event.type;
    const detail = JSON.stringify(event.detail) ?? '';
    item.append(name, ` ${detail.length > DETAIL_AT_MOST ? `${detail.slice(0, DETAIL_AT_MOST)} …` : detail}`);
    told.prepend(item);
    while (told.children.length > TOLD_AT_MOST) told.lastElementChild!.remove();
    part('nothing-told').hidden = true;
  };
  for (const name of (live.dataset.events ?? '').split(' ').filter(Boolean)) live.addEventListener(name, hear);

  const follow = (): void => {
    const what = chosen();
    show(what);
    void place(what);
  };
  form.addEventListener('submit', (event) => event.preventDefault());
  form.addEventListener('input', () => show(chosen()));
  form.addEventListener('change', follow);
  for (const button of root.querySelectorAll<HTMLButtonElement>('[data-copy]')) {
    button.addEventListener('click', async () => {
      const text = part(button.dataset.copy!);
      status.textContent = (await copied(text)) ? status.dataset.copied! : status.dataset.notCopied!;
    });
  }
  follow();
}

/** Where the clipboard is closed, the text is selected for the keyboard. */
async function copied(text: HTMLElement): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text.textContent);
    return true;
  } catch {
    getSelection()?.selectAllChildren(text);
    return false;
  }
}
