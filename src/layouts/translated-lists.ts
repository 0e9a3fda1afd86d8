import { type CollectionEntry, getCollection } from 'astro:content';

type List = CollectionEntry<'checklists'>['data'];

/** A list in another language: only texts, by the ids and titles of the English list. */
export interface ListTexts {
  readonly title: string;
  readonly summary: string;
  readonly sections: Readonly<Record<string, { readonly title: string; readonly note?: string }>>;
  readonly points: Readonly<Record<string, { readonly text: string; readonly why?: string }>>;
}

const TEXTS = import.meta.glob<ListTexts>('../../shared/checklists/*/*.json', { eager: true, import: 'default' });

/** A text, and its language where that is not the one of the page. */
export interface Text {
  readonly text: string;
  readonly lang?: 'en';
}

export interface TranslatedList {
  readonly id: string;
  readonly title: Text;
  readonly summary: Text;
  readonly sections: readonly {
    readonly title: Text;
    readonly note?: Text;
    readonly items: readonly {
      readonly id: string;
      readonly text: Text;
      readonly why?: Text;
      readonly when?: List['sections'][number]['items'][number]['when'];
    }[];
  }[];
  readonly sources: readonly string[];
}

/** The checklists in their order. What a language does not have stands there in English, and is marked so. */
export async function translatedLists(tag: string): Promise<readonly TranslatedList[]> {
  const lists = (await getCollection('checklists')).sort((a, b) => a.data.order - b.data.order);
  return lists.map(({ id, data }) => {
    const theirs = TEXTS[`../../shared/checklists/${tag}/${id}.json`];
    const said = (text: string, their: string | undefined): Text =>
      tag === 'en' ? { text } : their === undefined ? { text, lang: 'en' } : { text: their };
    return {
      id,
      title: said(data.title, theirs?.title),
      summary: said(data.summary, theirs?.summary),
      sections: data.sections.map((section) => {
        const { title, note } = theirs?.sections[section.title] ?? {};
        return {
          title: said(section.title, title),
          ...(section.note !== undefined && { note: said(section.note, note) }),
          items: section.items.map((point) => {
            const { text, why } = theirs?.points[point.id] ?? {};
            return {
              id: point.id,
              text: said(point.text, text),
              ...(point.why !== undefined && { why: said(point.why, why) }),
              ...(point.when && { when: point.when }),
            };
          }),
        };
      }),
      sources: data.sources,
    };
  });
}
