import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readChecklist } from '../../../src/components/checklist/read-checklist.ts';
import { shippedLists } from '../../../src/components/checklist/shipped-lists.ts';

const folder = 'shared/checklists';
const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
const text = (file: string) => readFileSync(`${folder}/${file}`, 'utf8');

describe('the shipped checklists', () => {
  it('can all be named by a page that shows the element', () => {
    expect(Object.keys(shippedLists).sort()).toEqual(files.map((file) => file.replace('.json', '')).sort());
  });

  it.each(files)('%s passes the door for lists of a page’s own', (file) => {
    expect(readChecklist(JSON.parse(text(file)))).toMatchObject({ ok: true });
  });

  it('name their sources, and no two have the same place in the order', () => {
    const lists = files.map((file) => JSON.parse(text(file)));
    for (const list of lists) expect(list.sources.length, list.title).toBeGreaterThan(0);
    expect(new Set(lists.map(({ order }) => order)).size).toBe(files.length);
  });

  it('keep the names of points under which links and ticks were made', () => {
    const old = {
      'before-launch': ['forecast', 'kill-cord-test', 'jackets', 'plate', 'anchor', 'drinking-water'],
      'on-the-water': ['kill-cord-on', 'used-against-plan', 'anchor-first', 'stern-away', 'tow-slow', 'red-button'],
      fuel: ['amount-read', 'filled-ashore', 'sniff', 'spare-can', 'exhaust'],
      battery: ['charging', 'pack-whole', 'connectors', 'cut-back', 'lead-acid'],
      'passage-plan': ['thirds', 'slow-home', 'turning-amount'],
      'coming-home': ['say-late', 'close-note', 'log'],
    };
    for (const [list, ids] of Object.entries(old)) {
      const found = JSON.parse(text(`${list}.json`)).sections.flatMap((s: { items: { id: string }[] }) => s.items);
      expect(found.map(({ id }: { id: string }) => id)).toEqual(expect.arrayContaining(ids));
    }
  });
});

describe('readChecklist', () => {
  const point = { id: 'plugs', text: 'Plugs in' };
  const own = { title: 'Club boat', sections: [{ title: 'Slip', items: [point] }] };

  it('takes a list with a title and one section', () => {
    expect(readChecklist(own)).toMatchObject({ ok: true, value: { title: 'Club boat', sources: [] } });
  });

  it('says what is wrong and where', () => {
    const wrong = [
      [{ ...own, sections: [] }, 'sections'],
      [{ ...own, sections: [{ title: 'Slip', items: [{ ...point, when: ['steam'] }] }] }, 'sections.0.items.0.when.0'],
      [{ ...own, sections: [{ title: 'Slip', items: [point, point] }] }, 'same id'],
      ['a list', ''],
    ] as const;
    for (const [value, told] of wrong) {
      const read = readChecklist(value);
      expect(read.ok).toBe(false);
      expect(JSON.stringify(read)).toContain(told);
    }
  });
});
