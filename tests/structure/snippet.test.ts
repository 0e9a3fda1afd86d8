import { parse } from 'node-html-parser';
import { describe, expect, it } from 'vitest';
import { EXHIBITS, FRAMED_EXHIBITS, snippetOf } from '../../src/layouts/gallery.ts';
import { guestPage } from '../../src/layouts/guest-page.ts';
import { siteLanguages } from '../../src/layouts/site-language.ts';
import { markupOf, sheetOf } from '../../src/layouts/snippet.ts';

const planner = { tag: 'homeleg-planner', folder: '/embed/', attributes: [], styles: [] };

describe('markupOf', () => {
  it('is two lines: the script of the element, and the element', () => {
    expect(markupOf(planner)).toBe(
      '<script type="module" src="/embed/planner.js"></script>\n<homeleg-planner></homeleg-planner>',
    );
  });

  it('takes any folder, with or without a slash at its end', () => {
    for (const folder of ['/boats', '/boats/', ' /boats// ']) {
      expect(markupOf({ ...planner, folder })).toContain('src="/boats/planner.js"');
    }
  });

  it('keeps what somebody types inside its quotes', () => {
    const attributes = [
      ['waters', '"><script>alert(1)</script>'],
      ['wide', true],
    ] as const;
    expect(markupOf({ ...planner, attributes })).toContain(
      '<homeleg-planner waters="&quot;>&lt;script>alert(1)&lt;/script>" wide></homeleg-planner>',
    );
  });
});

describe('sheetOf', () => {
  it('is there only where something is set', () => {
    expect(sheetOf(planner)).toBe('');
    expect(sheetOf({ ...planner, styles: [['color-scheme', 'dark']] })).toBe(
      'homeleg-planner {\n  color-scheme: dark;\n}',
    );
  });
});

describe('the gallery', () => {
  const exhibit = (id: string) => EXHIBITS.find((each) => each.id === id)!;

  it('shows a snippet with the element and what its sheet sets', () => {
    const dealer = snippetOf(exhibit('dealer'));
    expect(dealer).toContain('<homeleg-load-table units="metric"></homeleg-load-table>');
    expect(dealer).toContain('--homeleg-accent: light-dark(#1f4f8f, #a9c9f5);');
  });

  it.each(FRAMED_EXHIBITS.flatMap((each) => siteLanguages.map((language) => [each.id, language.tag] as const)))(
    'frames a whole page of the %s, in %s: titled, with its own sheet, said to be invented, out of search',
    (id, tag) => {
      const language = siteLanguages.find((each) => each.tag === tag)!;
      const page = parse(guestPage(exhibit(id), language));
      const { gallery } = language.texts;
      expect(page.querySelector('html')?.getAttribute('lang')).toBe(tag);
      expect(page.querySelector('title')?.text).toBe(gallery[exhibit(id).id].name);
      expect(page.querySelector('meta[name="robots"]')?.getAttribute('content')).toBe('noindex');
      expect(page.querySelector('link[rel="stylesheet"]')?.getAttribute('href')).toBe(`/guests/${id}.css`);
      expect(page.querySelectorAll('[style], style, script:not([src])')).toEqual([]);
      expect(page.querySelector('main')?.text).toContain(gallery.invented);
    },
  );
});
