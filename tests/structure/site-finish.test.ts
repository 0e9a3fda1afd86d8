import { parse } from 'node-html-parser';
import { describe, expect, it } from 'vitest';
import { searchTexts } from '../../scripts/site/search-texts.ts';
import { robots, sitemap } from '../../scripts/site/sitemap.ts';
import { excerpt } from '../../src/layouts/excerpt.ts';
import { searchOf } from '../../src/layouts/searching.ts';

const page = (path: string, main: string, listed = true) => ({
  path,
  listed,
  html: parse(`<head><meta name="description" content="About it."></head><main><h1>Lists</h1>${main}</main>`),
});

describe('searchTexts', () => {
  it('cuts a page at its headings and at the points of a list, each with its own address', () => {
    const main = '<p>First.</p><h2 id="slip">On the slip</h2><p>Calm?</p><ul><li id="plugs"><p>Plugs in</p></li></ul>';
    expect(searchTexts([page('/lists/', main)])).toEqual([
      { to: '/lists/', page: 'Lists', heading: '', text: 'About it. First.' },
      { to: '/lists/#slip', page: 'Lists', heading: 'On the slip', text: 'Calm?' },
      { to: '/lists/#plugs', page: 'Lists', heading: 'On the slip', text: 'Plugs in' },
    ]);
  });

  it('leaves out controls, what only stands in until a script is there, and pages that are not listed', () => {
    const main = '<p><button>Print</button></p><homeleg-x><p>Loading</p></homeleg-x><noscript><p>No</p></noscript>';
    expect(searchTexts([page('/a/', main), page('/b/', '', false)])).toEqual([
      { to: '/a/', page: 'Lists', heading: '', text: 'About it.' },
    ]);
  });
});

describe('searchOf', () => {
  const place = (to: string, text: string) => ({ to, page: 'List', heading: '', text });
  const search = searchOf([
    place('cord', 'Kill cord round the thigh'),
    place('tow', 'Line on low points'),
    place('jacket', 'A life jacket for each'),
  ]);

  it('asks for all words, and is content with some where no place has all', () => {
    expect(search('kill cord').map(({ to }) => to)).toEqual(['cord']);
    expect(
      search('cord line')
        .map(({ to }) => to)
        .sort(),
    ).toEqual(['cord', 'tow']);
  });

  it('knows words of other harbours', () => {
    expect(search('lanyard').map(({ to }) => to)).toEqual(['cord']);
    expect(search('PFD').map(({ to }) => to)).toEqual(['jacket']);
  });
});

describe('excerpt', () => {
  const text = `${'Calm water. '.repeat(40)}Then the anchor holds. ${'More wind. '.repeat(40)}`;

  it('shows the words looked for, cut between words', () => {
    const cut = excerpt(text, 'ANCHOR', 80);
    expect(cut).toContain('anchor');
    expect(cut.length).toBeLessThan(90);
    expect(cut).toMatch(/^… \w+.* …$/);
  });

  it('begins at the beginning where the word is not in it, and leaves short texts whole', () => {
    expect(excerpt(text, 'zebra', 40)).toMatch(/^Calm water/);
    expect(excerpt('Short.', 'x')).toBe('Short.');
  });
});

describe('sitemap', () => {
  it('names the listed pages by whole addresses', () => {
    const map = sitemap([page('/lists/', ''), page('/404.html', '', false)], 'https://boats.example');
    expect(map).toContain('<loc>https://boats.example/lists/</loc>');
    expect(map).not.toContain('404');
    expect(robots('https://boats.example')).toContain('Sitemap: https://boats.example/sitemap.xml');
  });
});
