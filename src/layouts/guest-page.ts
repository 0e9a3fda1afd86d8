import type { Exhibit } from './gallery.ts';
import type { SiteLanguage } from './site-language.ts';
import { escaped, tagOf } from './snippet.ts';

/**
 * A whole page of somebody else, as the gallery frames and shows it: plain HTML with a sheet of its own, the script of
 * the element, and the element.
 */
export function guestPage(exhibit: Exhibit, { tag, texts: { gallery } }: SiteLanguage): string {
  const { name, text } = gallery[exhibit.id];
  const scripts = [`/embed/${exhibit.chosen.tag.replace('homeleg-', '')}.js`, ...(exhibit.scripts ?? [])];
  const element = tagOf(exhibit.chosen);
  const body = exhibit.id === 'desk' ? booking(element, gallery.booking) : [element];
  return `<!doctype html>
<html lang="${tag}">
  <head>
    <meta charset="utf-8">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <meta name="robots" content="noindex">
    <title>${escaped(name)}</title>
    <link rel="stylesheet" href="/guests/${exhibit.id}.css">
${scripts.map((script) => `    <script type="module" src="${script}"></script>`).join('\n')}
  </head>
  <body>
    <main aria-labelledby="name">
      <h1 id="name">${escaped(name)}</h1>
      <p>${escaped(text)}</p>
${body.map((line) => `      ${line}`).join('\n')}
      <p class="invented">${escaped(gallery.invented)}</p>
    </main>
  </body>
</html>
`;
}

/** A form sends what the element holds, and not before it holds a plan. */
function booking(element: string, words: SiteLanguage['texts']['gallery']['booking']): readonly string[] {
  return [
    `<form data-booked="${escaped(words.booked)}">`,
    `  ${element}`,
    `  <button>${escaped(words.button)}</button>`,
    '  <p role="status"></p>',
    '</form>',
  ];
}
