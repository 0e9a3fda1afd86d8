import { type Chosen, markupOf, sheetOf } from './snippet.ts';

/** A page of the gallery: which element, and what the page around it sets. */
export interface Exhibit {
  readonly id: 'club' | 'desk' | 'dealer' | 'dark' | 'narrow';
  readonly chosen: Chosen;
  /** Lines of a script that the page needs besides. */
  readonly script?: string;
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
    chosen: at(
      'homeleg-planner',
      [['units', 'metric']],
      [
        ['--homeleg-accent', 'light-dark(#7a2f1d, #f2b59f)'],
        ['--homeleg-on-accent', 'light-dark(#ffffff, #3a140a)'],
        ['--homeleg-radius', '2px'],
      ],
    ),
    script: `document.querySelector('homeleg-planner').tighten = { reserve: [{ kind: 'share', share: 0.5 }] };`,
  },
  { id: 'desk', chosen: at('homeleg-reserve-check', [['units', 'metric']]) },
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

/** All that a page has to hold for it. */
export function snippetOf({ chosen, script }: Exhibit): string {
  const sheet = sheetOf(chosen);
  return [markupOf(chosen), script && `\n// ${SCRIPT_OF}\n${script}`, sheet && `\n/* ${SHEET_OF} */\n${sheet}`]
    .filter(Boolean)
    .join('\n');
}

const SCRIPT_OF = 'in a script of the page';
const SHEET_OF = 'in its style sheet';
