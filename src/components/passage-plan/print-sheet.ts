import type { PassageSheet } from './passage-sheet.ts';
import './sheet-paper.ts';

const ALONE = `
  @media screen { body > homeleg-sheet-paper { display: none; } }
  @media print { body > :not(homeleg-sheet-paper) { display: none !important; } }
  @page { margin: 14mm; }
`;

/** Prints one sheet and nothing else of the page, whatever page that is. */
export async function printSheet(sheet: PassageSheet, lang: string): Promise<void> {
  const paper = document.createElement('homeleg-sheet-paper');
  paper.sheet = sheet;
  paper.lang = lang;
  const alone = new CSSStyleSheet();
  alone.replaceSync(ALONE);
  document.body.append(paper);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, alone];
  await paper.updateComplete;
  const done = () => {
    paper.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== alone);
  };
  globalThis.addEventListener('afterprint', done, { once: true });
  globalThis.print();
}
