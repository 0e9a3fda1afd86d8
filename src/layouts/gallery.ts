import { type Chosen, markupOf, sheetOf } from './snippet.ts';

/** A page of the gallery: which element, and what the page around it sets. */
export interface Exhibit {
  readonly id: 'club' | 'desk' | 'dealer' | 'dark' | 'narrow';
  readonly chosen: Chosen;
  /** A page of its own in a frame, with these scripts beside the element's; without it, the element on the gallery's page. */
  readonly scripts?: readonly string[];
}

const at = (tag: string, attributes: Chosen['attributes'] = [], styles: Chosen['styles'] = []): Chosen => ({
  tag,
  folder: '/embed/',
  attributes,
  styles,
});

export const EXHIBITS: readonly Exhibit[] = [
  {
    id: 'club',
    chosen: at('homeleg-planner', [
      ['units', 'metric'],
      ['reserve', '50 %'],
      ['keep', 'none'],
      ['tell-size', true],
    ]),
    scripts: [],
  },
  {
    id: 'desk',
    chosen: at('homeleg-reserve-check', [
      ['units', 'metric'],
      ['name', 'trip'],
    ]),
    scripts: ['/guests/tell-height.js', '/guests/desk.js'],
  },
  {
    id: 'dealer',
    chosen: at('homeleg-load-table', [['units', 'metric']], [['--homeleg-accent', 'light-dark(#1f4f8f, #a9c9f5)']]),
  },
  { id: 'dark', chosen: at('homeleg-suit', [['units', 'metric']], [['color-scheme', 'dark']]) },
  {
    id: 'narrow',
    chosen: at('homeleg-checklist', [
      ['list', 'before-launch'],
      ['keep', 'none'],
    ]),
  },
];

/** Those whose page stands in a frame. */
export const FRAMED_EXHIBITS = EXHIBITS.filter(({ scripts }) => scripts !== undefined);

/** Where such a page stands, in English. */
export function guestPath({ id }: Exhibit): string {
  return `/guests/${id}.html`;
}

/** All that a page has to hold for an element on it. */
export function snippetOf({ chosen }: Exhibit): string {
  const sheet = sheetOf(chosen);
  return [markupOf(chosen), sheet && `\n/* ${SHEET_OF} */\n${sheet}`].filter(Boolean).join('\n');
}

const SHEET_OF = 'in its style sheet';
