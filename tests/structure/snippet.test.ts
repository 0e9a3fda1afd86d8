import { describe, expect, it } from 'vitest';
import { EXHIBITS, snippetOf } from '../../src/layouts/gallery.ts';
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
  it('shows a snippet with the element, what its script sets and what its sheet sets', () => {
    const club = snippetOf(EXHIBITS.find(({ id }) => id === 'club')!);
    expect(club).toContain('<homeleg-planner units="metric"></homeleg-planner>');
    expect(club).toContain("tighten = { reserve: [{ kind: 'share', share: 0.5 }] }");
    expect(club).toContain('--homeleg-radius: 2px;');
  });
});
