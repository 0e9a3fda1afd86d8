import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

interface Point {
  readonly text: string;
  readonly why?: string;
}
interface Section {
  readonly title: string;
  readonly note?: string;
  readonly items: readonly (Point & { readonly id: string })[];
}
interface English {
  readonly title: string;
  readonly summary: string;
  readonly sections: readonly Section[];
}
interface Translated {
  readonly title: string;
  readonly summary: string;
  readonly sections: Readonly<Record<string, { readonly title: string; readonly note?: string }>>;
  readonly points: Readonly<Record<string, Point>>;
}

const folder = 'shared/checklists';
const read = <T>(file: string): T => JSON.parse(readFileSync(`${folder}/${file}`, 'utf8'));
const lists = readdirSync(folder).filter((name) => name.endsWith('.json'));
const tags = readdirSync('src/content/site')
  .map((name) => name.replace('.ts', ''))
  .filter((tag) => tag !== 'en');

/** Figures and calls for help: what may not be lost or changed on the way into another language. */
const fixed = ({ text, why = '' }: Point) => `${text} ${why}`.match(/\d+|MAYDAY|PAN-PAN|MMSI/g)?.sort() ?? [];
const points = (list: English) => list.sections.flatMap(({ items }) => items);

describe.each(tags)('the checklists in %s', (tag) => {
  it('are the English ones, all of them', () => {
    expect(readdirSync(`${folder}/${tag}`).sort()).toEqual(lists);
  });

  it.each(lists)('have every section and point of %s, with its reason, and none that is not there', (name) => {
    const english = read<English>(name);
    const theirs = read<Translated>(`${tag}/${name}`);
    expect(Object.keys(theirs.sections)).toEqual(english.sections.map(({ title }) => title));
    expect(Object.keys(theirs.points)).toEqual(points(english).map(({ id }) => id));
    for (const { title, note } of english.sections) {
      expect('note' in theirs.sections[title]!, `note of ${title}`).toBe(note !== undefined);
    }
    for (const { id, why } of points(english)) {
      expect('why' in theirs.points[id]!, `reason of ${id}`).toBe(why !== undefined);
    }
  });

  it.each(lists)('lose no figure and no call for help of %s', (name) => {
    const theirs = read<Translated>(`${tag}/${name}`).points;
    for (const point of points(read<English>(name))) expect(fixed(theirs[point.id]!), point.id).toEqual(fixed(point));
  });

  it.each(lists)('are not left in English in %s, and stay short enough for one page', (name) => {
    const english = read<English>(name);
    const theirs = read<Translated>(`${tag}/${name}`);
    const said = ({ text, why = '' }: Point) => text.length + why.length;
    const length = (all: readonly Point[]) => all.reduce((sum, point) => sum + said(point), 0);
    for (const { id, text } of points(english)) expect(theirs.points[id]!.text, id).not.toBe(text);
    expect(theirs.summary).not.toBe(english.summary);
    expect(length(Object.values(theirs.points))).toBeLessThan(1.2 * length(points(english)));
  });
});
